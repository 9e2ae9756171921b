using System.Collections.Concurrent;
using System.Globalization;

namespace Foramen.Mutants;

/// <summary>Asks the tests about the mutants of a report, in as many processes as there are cores, and writes down what became of each.</summary>
internal sealed class Director(string changed, MutantReport report)
{
    // A busy machine is no test.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);
    private const int Slowness = 10;

    // With no mutant on everything comes to an end, the first time after it was compiled.
    private static readonly TimeSpan LongPatience = TimeSpan.FromMinutes(10);

    private static int Workers => int.TryParse(Environment.GetEnvironmentVariable("MUTATION_WORKERS"), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Math.Clamp(number, 1, 64) : Environment.ProcessorCount;

    // Only tests whose names hold one of these; all, where it is empty.
    private static readonly string[] Wanted = (Environment.GetEnvironmentVariable("MUTATION_TESTS") ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries);

    // Tests that take longer are not asked; all are, where nothing is said.
    private static readonly double LongestSeconds =
        double.TryParse(Environment.GetEnvironmentVariable("MUTATION_LONGEST"), NumberStyles.Float, CultureInfo.InvariantCulture, out var seconds) && seconds > 0 ? seconds : double.PositiveInfinity;

    /// <param name="again">Only those that no test noticed last time.</param>
    /// <exception cref="InvalidOperationException">A test does not pass with no mutant on.</exception>
    public async Task Ask(bool again)
    {
        var encounters = await Meet().ConfigureAwait(false);
        var asked = report.Mutants.Where(mutant => mutant.Status is { } status && (!again || status is MutantStatus.Survived or MutantStatus.NoCoverage)).ToLookup(mutant => encounters.IsStatic(mutant.Id));
        await ByWorkers(asked[false], waiting => AskTogether(waiting, encounters)).ConfigureAwait(false);
        await ByWorkers(asked[true], waiting => AskAlone(waiting, encounters)).ConfigureAwait(false);
        report.Write();
    }

    private async Task<Encounters> Meet()
    {
        await using var worker = new WorkerProcess(changed);
        var names = await worker.List(LongPatience).ConfigureAwait(false);
        var encounters = new Encounters(Numbers(await worker.Ask("make", LongPatience).ConfigureAwait(false) ?? ""));
        var wanted = Enumerable.Range(0, names.Count).Where(test => Wanted.Length == 0 || Array.Exists(Wanted, word => names[test].Contains(word, StringComparison.Ordinal))).ToList();
        var asked = 0;
        foreach (var test in wanted)
        {
            var answer = await worker.Ask($"meet {test}", LongPatience).ConfigureAwait(false);
            if (answer?.Split(';') is not [var time, Worker.Passed, var met])
            {
                throw new InvalidOperationException($"{names[test]} does not pass with no mutant on; mend it first.");
            }

            var took = TimeSpan.FromMilliseconds(long.Parse(time, CultureInfo.InvariantCulture));
            if (took.TotalSeconds <= LongestSeconds)
            {
                encounters.Add(test, took, Numbers(met));
                asked++;
            }
        }

        await Console.Error.WriteLineAsync($"{wanted.Count} tests pass with no mutant on, {asked} of them are asked.").ConfigureAwait(false);
        return encounters;
    }

    private static Task ByWorkers(IEnumerable<Mutant> mutants, Func<ConcurrentQueue<Mutant>, Task> ask)
    {
        var waiting = new ConcurrentQueue<Mutant>(mutants);
        return Task.WhenAll(Enumerable.Range(0, Workers).Select(_ => ask(waiting)));
    }

    // One process for all, until a mutant has ended or stopped it.
    private async Task AskTogether(ConcurrentQueue<Mutant> waiting, Encounters encounters)
    {
        while (!waiting.IsEmpty)
        {
            await using var worker = new WorkerProcess(changed);
            await worker.Ask("make", LongPatience).ConfigureAwait(false);
            for (var usable = true; usable && Next(waiting) is { } mutant;)
            {
                var status = await Ask(worker, mutant.Id, encounters).ConfigureAwait(false);
                report.Note(mutant, status);
                usable = !worker.Ended && status != MutantStatus.Timeout;
            }
        }
    }

    // What is made once has to be made with the mutant on.
    private async Task AskAlone(ConcurrentQueue<Mutant> waiting, Encounters encounters)
    {
        while (Next(waiting) is { } mutant)
        {
            await using var worker = new WorkerProcess(changed);
            report.Note(mutant, await Ask(worker, mutant.Id, encounters).ConfigureAwait(false));
        }
    }

    private Mutant? Next(ConcurrentQueue<Mutant> waiting)
    {
        if (!waiting.TryDequeue(out var mutant))
        {
            return null;
        }

        if (waiting.Count % 50 == 0)
        {
            Console.Error.WriteLine($"{waiting.Count} left");

            // Whoever stops here goes on with --again.
            report.Write();
        }

        return mutant;
    }

    private static async Task<MutantStatus> Ask(WorkerProcess worker, int mutant, Encounters encounters)
    {
        var tests = encounters.TestsFor(mutant);
        foreach (var test in tests)
        {
            try
            {
                if (await worker.Ask($"try {mutant} {test}", Patience + (Slowness * encounters.TimeOf(test))).ConfigureAwait(false) != Worker.Passed)
                {
                    return MutantStatus.Killed;
                }
            }
            catch (TimeoutException)
            {
                return MutantStatus.Timeout;
            }
        }

        return tests.Count == 0 ? MutantStatus.NoCoverage : MutantStatus.Survived;
    }

    private static IEnumerable<int> Numbers(string list) => list.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(number => int.Parse(number, CultureInfo.InvariantCulture));
}
