using Mono.Cecil;

namespace Foramen.Architecture.Tests;

/// <summary>
/// What of the compiled projects is reached from where they are entered: the programs' starts, the pages with an address, what an interface or a base outside asks for.
/// A type that is named is taken to be made; a method is reached by a call, a delegate or an expression in a reached body.
/// </summary>
/// <remarks>
/// The methods that the compiler writes for a record call each of its properties; those calls do not count, or no property of a record were ever unread.
/// What is found by its name at run time is known by the attribute that says so, see <see cref="EntryPoints"/>.
/// </remarks>
internal sealed class ReachedMembers
{
    private readonly ProductCode code;
    private readonly HashSet<MethodDefinition> methods = [];
    private readonly HashSet<TypeDefinition> types = [];
    private readonly Queue<MethodDefinition> open = new();

    private ReachedMembers(ProductCode code) => this.code = code;

    /// <param name="code">The projects.</param>
    /// <param name="entered">Full name of one more type that is entered from outside.</param>
    public static ReachedMembers In(ProductCode code, string? entered = null)
    {
        var reached = new ReachedMembers(code);
        reached.ReachAttributes(code.Assemblies);
        foreach (var assembly in code.Assemblies.Where(each => each.EntryPoint is not null))
        {
            reached.Reach(assembly.EntryPoint);
        }

        foreach (var type in code.Types.Where(type => EntryPoints.IsEntered(type) || type.FullName == entered))
        {
            reached.Reach(type);
        }

        reached.Walk();
        return reached;
    }

    public bool Has(MethodDefinition method) => methods.Contains(method);

    private void Walk()
    {
        bool grew;
        do
        {
            while (open.TryDequeue(out var method))
            {
                ReachFrom(method);
            }

            // What answers a call by way of a base or an interface is reached with the first call of that, and with the type that answers.
            grew = false;
            foreach (var method in types.SelectMany(type => type.Methods).Where(method => !methods.Contains(method) && code.Answers(method, methods)).ToList())
            {
                Reach(method);
                grew = true;
            }
        }
        while (grew);
    }

    private void ReachFrom(MethodDefinition method)
    {
        ReachAttributes([method]);
        ReachAttributes(method.Parameters);
        if (!method.HasBody || ProductCode.IsWrittenForRecord(method))
        {
            return;
        }

        foreach (var instruction in method.Body.Instructions)
        {
            ReachOperand(instruction.Operand);
        }

        foreach (var handler in method.Body.ExceptionHandlers)
        {
            Reach(handler.CatchType);
        }
    }

    private void ReachOperand(object? operand)
    {
        switch (operand)
        {
            case MethodReference method:
                Reach(method);
                break;
            case FieldReference field:
                Reach(field.DeclaringType);
                break;
            case TypeReference type:
                Reach(type);
                break;
        }
    }

    private void Reach(MethodReference reference)
    {
        Reach(reference.DeclaringType);
        if (reference is GenericInstanceMethod generic)
        {
            foreach (var argument in generic.GenericArguments)
            {
                Reach(argument);
            }
        }

        if (code.Find(reference) is { } method && methods.Add(method))
        {
            open.Enqueue(method);
        }
    }

    private void Reach(TypeReference? reference)
    {
        if (reference is GenericInstanceType generic)
        {
            foreach (var argument in generic.GenericArguments)
            {
                Reach(argument);
            }
        }

        if (reference is null || code.Find(reference) is not { } type || !types.Add(type))
        {
            return;
        }

        Reach(type.DeclaringType);
        Reach(type.BaseType);
        ReachAttributes([type, .. type.Fields, .. type.Properties]);
        foreach (var method in type.Methods.Where(method => method.IsConstructor || EntryPoints.IsEntered(method)))
        {
            Reach(method);
        }
    }

    private void ReachAttributes(IEnumerable<ICustomAttributeProvider> providers)
    {
        foreach (var attribute in providers.SelectMany(provider => provider.CustomAttributes))
        {
            Reach(attribute.AttributeType);
            foreach (var named in attribute.ConstructorArguments.Concat(attribute.Properties.Select(each => each.Argument)).Select(each => each.Value).OfType<TypeReference>())
            {
                Reach(named);
            }
        }
    }
}
