using Mono.Cecil;

namespace Foramen.Architecture.Tests;

/// <summary>
/// What each namespace of a compiled project uses of the others: in signatures, attributes and method bodies. A constant is not seen: the compiler copies its value.
/// </summary>
/// <remarks>
/// Namespaces are counted by their first part below the project's own, so <c>Foramen.Field.Sheets.Frame</c> belongs to <c>Sheets</c>; what stands in the project's
/// own namespace is a group of its own. Nested types, and those the compiler makes for lambdas and iterators, belong to the type around them.
/// </remarks>
internal sealed class NamespaceUses
{
    private const int MostNamed = 6;

    private readonly string root;
    private readonly Dictionary<(string From, string To), SortedSet<string>> uses = [];

    private NamespaceUses(string root) => this.root = root;

    /// <param name="assembly">Path of the compiled project.</param>
    /// <param name="root">The namespace whose parts are asked about.</param>
    public static NamespaceUses Read(string assembly, string root)
    {
        var found = new NamespaceUses(root);
        using var module = ModuleDefinition.ReadModule(assembly);
        foreach (var type in module.GetTypes())
        {
            if (found.GroupOf(type) is { } group)
            {
                found.Add(type, group, new TypesNamed(type).All);
            }
        }

        return found;
    }

    /// <summary>Which namespace uses which.</summary>
    public IReadOnlyCollection<(string From, string To)> Pairs => uses.Keys;

    /// <summary>The uses that go round, each with the types behind it, the thinnest first: there a cycle is cut most easily. None where namespaces stand in an order.</summary>
    public IReadOnlyList<string> Cycles()
        =>
        [
            .. uses.Where(use => Reaches(use.Key.To, use.Key.From))
                .OrderBy(use => use.Value.Count).ThenBy(use => use.Key)
                .Select(use => $"{use.Key.From} uses {use.Key.To}: {Some(use.Value)}"),
        ];

    private bool Reaches(string start, string goal)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([start]);
        while (open.TryPop(out var group))
        {
            if (group == goal)
            {
                return true;
            }

            if (seen.Add(group))
            {
                foreach (var use in uses.Keys.Where(use => use.From == group))
                {
                    open.Push(use.To);
                }
            }
        }

        return false;
    }

    private void Add(TypeDefinition type, string group, IEnumerable<TypeReference> named)
    {
        foreach (var other in named)
        {
            if (GroupOf(other) is { } otherGroup && otherGroup != group)
            {
                if (!uses.TryGetValue((group, otherGroup), out var types))
                {
                    uses[(group, otherGroup)] = types = new SortedSet<string>(StringComparer.Ordinal);
                }

                types.Add($"{Outermost(type).Name} -> {Outermost(other).Name}");
            }
        }
    }

    private static string Some(SortedSet<string> types)
        => string.Join(", ", types.Take(MostNamed)) + (types.Count > MostNamed ? $" and {types.Count - MostNamed} more" : "");

    // Only the project's own types: nothing in another assembly can use this one back.
    private string? GroupOf(TypeReference type)
    {
        var outer = Outermost(type);
        return outer.Scope is AssemblyNameReference ? null
            : outer.Namespace == root ? root
            : outer.Namespace.StartsWith(root + ".", StringComparison.Ordinal) ? outer.Namespace[(root.Length + 1)..].Split('.')[0]
            : null;
    }

    private static TypeReference Outermost(TypeReference type)
    {
        while (type.DeclaringType is { } outer)
        {
            type = outer;
        }

        return type;
    }
}
