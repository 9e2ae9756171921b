using Mono.Cecil;

namespace Foramen.Architecture.Tests;

/// <summary>The methods and the properties of compiled projects that nothing reaches.</summary>
/// <remarks>
/// Not asked about: constructors, setters, operators and the methods that stand beside an operator for languages
/// without it; what overrides or fulfils an interface; what the compiler makes or another generator writes.
/// </remarks>
internal static class UnusedMembers
{
    private static readonly Dictionary<string, string> Operators = new(StringComparer.Ordinal)
    {
        ["Add"] = "op_Addition",
        ["Subtract"] = "op_Subtraction",
        ["Multiply"] = "op_Multiply",
        ["Divide"] = "op_Division",
        ["Negate"] = "op_UnaryNegation",
    };

    /// <summary>Their names, in order: <c>Namespace.Type.Property</c> or <c>Namespace.Type.Method(Type, Type)</c>.</summary>
    public static IReadOnlyList<string> In(ProductCode code, string? entered = null)
    {
        var reached = ReachedMembers.In(code, entered);
        return
        [
            .. code.Types.Where(type => !IsGenerated(type))
                .SelectMany(type => type.Methods)
                .Where(method => IsAskedAbout(method) && !reached.Has(method) && !code.IsAnswer(method))
                .Select(Name).Order(StringComparer.Ordinal),
        ];
    }

    private static bool IsAskedAbout(MethodDefinition method)
        => !method.IsConstructor && !method.IsSetter && !method.Name.StartsWith("op_", StringComparison.Ordinal) && !method.Name.StartsWith('<')
            && (method.IsGetter || !ProductCode.IsMadeByCompiler(method)) && method.Name != "get_EqualityContract"
            && !(Operators.TryGetValue(method.Name, out var symbol) && method.DeclaringType.Methods.Any(each => each.Name == symbol));

    private static bool IsGenerated(TypeDefinition? type)
        => type is not null && (type.Name.StartsWith('<') || type.Name == "_Imports" || ProductCode.IsMadeByCompiler(type)
            || type.CustomAttributes.Any(each => each.AttributeType.Name == "GeneratedCodeAttribute")
            || type.BaseType?.FullName is "System.Text.Json.Serialization.JsonSerializerContext" or "System.MulticastDelegate"
            || IsGenerated(type.DeclaringType));

    private static string Name(MethodDefinition method)
    {
        var type = method.DeclaringType.FullName.Replace('/', '.');
        return method.IsGetter
            ? $"{type}.{method.Name["get_".Length..]}{(method.HasParameters ? "[]" : "")}"
            : $"{type}.{method.Name}({string.Join(", ", method.Parameters.Select(each => each.ParameterType.Name))})";
    }
}
