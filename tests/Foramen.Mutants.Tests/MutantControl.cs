namespace Foramen.Mutants.Tests;

/// <summary>What the mutation tool compiles into an assembly, as far as it is used.</summary>
internal static class MutantControl
{
    private static List<int> met = [];
    private static List<int> metStatic = [];

#pragma warning disable CS0649 // Set by name, as in a changed assembly.
    public static bool CaptureCoverage;
#pragma warning restore CS0649
    public static int ActiveMutant = -2;

    public static bool IsActive(int id)
    {
        if (CaptureCoverage)
        {
            met.Add(id);
        }

        return !CaptureCoverage && id == ActiveMutant;
    }

    public static IList<int>[] GetCoverageData()
    {
        IList<int>[] result = [met, metStatic];
        (met, metStatic) = ([], []);
        return result;
    }
}
