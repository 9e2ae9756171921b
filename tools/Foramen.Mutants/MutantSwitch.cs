using System.Reflection;

namespace Foramen.Mutants;

/// <summary>The class that the mutation tool compiles into the assembly it changes: which mutant is on, and which ones were met.</summary>
internal sealed class MutantSwitch
{
    private const int None = -1;

    // Counting takes a hundred times as long as the work; what a trial in hundreds meets it meets early.
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(10);

    private readonly FieldInfo active;
    private readonly FieldInfo captures;
    private readonly MethodInfo met;

    private MutantSwitch(Type control)
    {
        active = control.GetField("ActiveMutant")!;
        captures = control.GetField("CaptureCoverage")!;
        met = control.GetMethod("GetCoverageData")!;
    }

    /// <summary>The switch of a changed assembly.</summary>
    /// <exception cref="InvalidOperationException">The assembly has not been changed by the tool.</exception>
    public static MutantSwitch Of(Assembly changed) =>
        new(changed.GetTypes().SingleOrDefault(type => type.Name == "MutantControl") ?? throw new InvalidOperationException($"{changed.GetName().Name} holds no mutants; tools/mutate puts them in."));

    /// <summary>From now on this mutant is on and no other.</summary>
    public void TurnOn(int mutant) => active.SetValue(null, mutant);

    /// <summary>Does the work with no mutant on and tells which were met in its first ten seconds.</summary>
    public IList<int> MetWhile(Action work)
    {
        TurnOn(None);
        captures.SetValue(null, true);
        Met();
        using (new Timer(_ => captures.SetValue(null, false), null, Enough, Timeout.InfiniteTimeSpan))
        {
            work();
        }

        captures.SetValue(null, false);
        return Met();
    }

    // Asking also forgets.
    private IList<int> Met() => met.Invoke(null, null) is IList<int>[] and [var all, ..] ? all : throw new InvalidOperationException("The mutation tool counts in another way than is known here.");
}
