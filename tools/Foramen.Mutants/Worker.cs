using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace Foramen.Mutants;

/// <summary>
/// The process in which tests are called: it answers line by line. <c>list</c>: a line for each test and an empty one. <c>make</c>: makes what is made once, and tells the mutants met over it.
/// <c>meet T</c>: the milliseconds it takes, whether test T passed, the mutants it met. <c>try M T</c>: whether test T noticed mutant M.
/// </summary>
internal sealed class Worker(Assembly changed, IReadOnlyList<TestCase> tests)
{
    public const string Noticed = "noticed";
    public const string Passed = "passed";

    private readonly MutantSwitch mutants = MutantSwitch.Of(changed);

    /// <summary>Serves until its input ends; then the process ends, whatever it is doing.</summary>
    /// <param name="changed">The name of the assembly with the mutants.</param>
    public static void Serve(string changed)
    {
        var (lines, answers) = (Console.In, Console.Out);

        // Tests may write; only answers go out.
        Console.SetOut(TextWriter.Null);
        var worker = new Worker(Assembly.Load(changed), TestCase.Of(Assembly.GetEntryAssembly()!));
        using var asked = new BlockingCollection<string>();
        _ = Task.Run(() => Listen(lines, asked));
        foreach (var line in asked.GetConsumingEnumerable())
        {
            answers.WriteLine(worker.Answer(line.Split(' ')));
            answers.Flush();
        }
    }

    // Whoever asks may be gone while a test does not come to an end.
    private static void Listen(TextReader lines, BlockingCollection<string> asked)
    {
        while (lines.ReadLine() is { } line)
        {
            asked.Add(line);
        }

        Environment.Exit(0);
    }

    private string Answer(string[] asked) => asked switch
    {
        ["list"] => string.Concat(tests.Select(test => test.Name + Environment.NewLine)),
        ["make"] => string.Join(',', mutants.MetWhile(() => Statics.Make(changed))),
        ["meet", var test] => Meet(tests[Number(test)]),
        ["try", var mutant, var test] => Try(Number(mutant), tests[Number(test)]),
        _ => throw new InvalidOperationException($"Not understood: {string.Join(' ', asked)}"),
    };

    private string Meet(TestCase test)
    {
        var passed = false;
        var met = mutants.MetWhile(() => passed = test.Passes());

        // Counting what is met takes many times as long as the test.
        var watch = Stopwatch.StartNew();
        passed &= test.Passes();
        return string.Create(CultureInfo.InvariantCulture, $"{watch.ElapsedMilliseconds};{(passed ? Passed : "failed")};{string.Join(',', met)}");
    }

    private string Try(int mutant, TestCase test)
    {
        mutants.TurnOn(mutant);
        return test.Passes() ? Passed : Noticed;
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
