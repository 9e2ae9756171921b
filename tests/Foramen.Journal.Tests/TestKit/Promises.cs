using System.Reflection;

namespace Foramen.TestKit;

/// <summary>docs/promises.md beside the tests that carry its ids. Linked into every project that keeps some of the promises.</summary>
internal static class Promises
{
    /// <summary>The ids that the document says are tested in this part.</summary>
    public static IEnumerable<string> Stated(string part) => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "promises.md"))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
        .Where(cells => cells.Length == 7 && cells[5] == part)
        .Select(cells => cells[1])
        .Order();

    /// <summary>The ids that tests of an assembly carry.</summary>
    public static IEnumerable<string> Tested(Assembly tests) => tests.GetTypes()
        .SelectMany(type => type.GetMethods())
        .SelectMany(method => method.GetCustomAttributes<TraitAttribute>())
        .Where(trait => trait.Name == "Promise")
        .Select(trait => trait.Value)
        .Distinct()
        .Order();
}
