using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Foramen.Architecture.Tests;

/// <summary>Every type that a compiled type names anywhere: bases, members, attributes, locals, instructions; taken apart down to arguments and elements.</summary>
internal sealed class TypesNamed
{
    private readonly HashSet<TypeReference> all = [];

    public TypesNamed(TypeDefinition type)
    {
        See(type.BaseType);
        SeeAll(type.Interfaces.Select(each => each.InterfaceType));
        SeeAll(type.GenericParameters.SelectMany(each => each.Constraints).Select(each => each.ConstraintType));
        SeeAttributes(type);
        foreach (var field in type.Fields)
        {
            See(field.FieldType);
            SeeAttributes(field);
        }

        foreach (var property in type.Properties)
        {
            SeeAttributes(property);
        }

        foreach (var method in type.Methods)
        {
            SeeMethod(method);
        }
    }

    public IReadOnlyCollection<TypeReference> All => all;

    private void SeeMethod(MethodDefinition method)
    {
        See((MethodReference)method);
        SeeAttributes(method);
        SeeAll(method.GenericParameters.SelectMany(each => each.Constraints).Select(each => each.ConstraintType));
        foreach (var parameter in method.Parameters)
        {
            SeeAttributes(parameter);
        }

        if (method.HasBody)
        {
            SeeAll(method.Body.Variables.Select(each => each.VariableType));
            SeeAll(method.Body.ExceptionHandlers.Select(each => each.CatchType));
            foreach (var instruction in method.Body.Instructions)
            {
                SeeOperand(instruction);
            }
        }
    }

    private void SeeOperand(Instruction instruction)
    {
        switch (instruction.Operand)
        {
            case TypeReference type:
                See(type);
                break;
            case MethodReference method:
                See(method);
                break;
            case FieldReference field:
                See(field.DeclaringType);
                See(field.FieldType);
                break;
        }
    }

    private void See(MethodReference method)
    {
        See(method.DeclaringType);
        See(method.ReturnType);
        SeeAll(method.Parameters.Select(each => each.ParameterType));
        if (method is GenericInstanceMethod instance)
        {
            SeeAll(instance.GenericArguments);
        }
    }

    private void SeeAttributes(ICustomAttributeProvider provider)
    {
        foreach (var attribute in provider.CustomAttributes)
        {
            See(attribute.AttributeType);
            SeeAll(attribute.ConstructorArguments.Concat(attribute.Properties.Select(each => each.Argument)).Select(each => each.Value).OfType<TypeReference>());
        }
    }

    private void SeeAll(IEnumerable<TypeReference?> types)
    {
        foreach (var type in types)
        {
            See(type);
        }
    }

    private void See(TypeReference? type)
    {
        switch (type)
        {
            case null or GenericParameter:
                break;
            case GenericInstanceType instance:
                See(instance.ElementType);
                SeeAll(instance.GenericArguments);
                break;
            case IModifierType modified:
                See(modified.ElementType);
                See(modified.ModifierType);
                break;
            case TypeSpecification made:
                See(made.ElementType);
                break;
            default:
                all.Add(type);
                break;
        }
    }
}
