using System.Globalization;

namespace Foramen.Mutants;

/// <summary>The program of a project under tools/mutation: its tests are asked about the mutants of a report. tools/mutate starts it.</summary>
public static class MutantTrial
{
    private const string Usage = "Give the name of the assembly with the mutants, the report that lists them and what to call it; after that, again for those only that no test noticed last time.";

    /// <returns>0 when every mutant was asked about, 1 when the tests do not pass by themselves, 2 for arguments that are not understood.</returns>
    public static async Task<int> Run(string[] arguments)
    {
        switch (arguments)
        {
            case ["worker", var changed]:
                Worker.Serve(changed);
                return 0;
            case [var changed, var path, var name, .. [] or ["again"]]:
                var report = MutantReport.Read(path);
                try
                {
                    await new Director(changed, report).Ask(again: arguments is [.., "again"]).ConfigureAwait(false);
                }
                catch (InvalidOperationException problem)
                {
                    await Console.Error.WriteLineAsync(problem.Message).ConfigureAwait(false);
                    return 1;
                }

                Print(name, report);
                return 0;
            default:
                await Console.Error.WriteLineAsync(Usage).ConfigureAwait(false);
                return 2;
        }
    }

    private static void Print(string name, MutantReport report)
    {
        foreach (var mutant in report.Mutants.Where(mutant => mutant.Status is MutantStatus.Survived or MutantStatus.NoCoverage))
        {
            Console.WriteLine($"{Path.GetRelativePath(Environment.CurrentDirectory, mutant.File)}:{mutant.Line} {(mutant.Status == MutantStatus.NoCoverage ? "not met" : "survived")} {mutant.Becomes}");
        }

        int Count(params MutantStatus[] statuses) => report.Mutants.Count(mutant => mutant.Status is { } status && statuses.Contains(status));
        var (noticed, all) = (Count(MutantStatus.Killed, MutantStatus.Timeout), Count(Enum.GetValues<MutantStatus>()));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: {100.0 * noticed / all:0.0} % of {all} noticed, {Count(MutantStatus.Timeout)} of them by not coming to an end; {Count(MutantStatus.Survived)} survived, {Count(MutantStatus.NoCoverage)} not met by any test."));
    }
}
