namespace Foramen.Mutants;

/// <summary>What the tests meet when nothing is changed: how long each takes, and which mutants lie on its way.</summary>
/// <param name="statics">Those that are met while what is made once is made.</param>
internal sealed class Encounters(IEnumerable<int> statics)
{
    private readonly HashSet<int> statics = [.. statics];
    private readonly Dictionary<int, List<int>> testsOf = [];
    private readonly Dictionary<int, TimeSpan> times = [];

    /// <summary>A test passed in this time and met these mutants.</summary>
    public void Add(int test, TimeSpan time, IEnumerable<int> met)
    {
        times[test] = time;
        foreach (var mutant in met)
        {
            if (!testsOf.TryGetValue(mutant, out var tests))
            {
                testsOf[mutant] = tests = [];
            }

            tests.Add(test);
        }
    }

    public TimeSpan TimeOf(int test) => times[test];

    /// <summary>Whether the mutant gets into what is made once in a process: it needs a process of its own.</summary>
    public bool IsStatic(int mutant) => statics.Contains(mutant);

    /// <summary>The tests to ask about a mutant, quick ones before slow ones. What is made once may be used by any test, not only by those that meet the mutant.</summary>
    public IReadOnlyList<int> TestsFor(int mutant)
    {
        var meets = testsOf.GetValueOrDefault(mutant) ?? [];
        var others = IsStatic(mutant) ? times.Keys.Except(meets) : [];
        return [.. meets.OrderBy(TimeOf), .. others.OrderBy(TimeOf)];
    }
}
