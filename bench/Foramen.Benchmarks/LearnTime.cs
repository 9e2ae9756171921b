using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Benchmarks;

/// <summary>Beliefs out of a history of a thousand judged sheets, from nothing and with one sheet more.</summary>
internal static class LearnTime
{
    private const int Sheets = 1000;
    private const int Rounds = 31;

    private static readonly DateTimeOffset Now = new(2026, 5, 9, 18, 0, 0, TimeSpan.Zero);

    private static readonly string[] Skies = ["noon", "overcast", "open shade"];

    public static string Measure()
    {
        var chance = new Random(1);
        var history = Enumerable.Range(0, Sheets).Select(i => Sheet(i, (0.6 * chance.NextDouble()) - 0.1 + (i % 40 == 0 ? 2 : 0))).ToList();
        var (whole, wholeFastest) = Times(() => Beliefs.From(history, Now));
        var known = Beliefs.From(history.Take(Sheets - 1), Now);
        var (one, oneFastest) = Times(() => known.With(history[^1]));
        var text = new StringBuilder();
        text.AppendLine("# Learning: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {MarkRows.Machine}, `bench/run learn`, {Rounds} single runs each, load average at the end {MarkRows.Load}.");
        text.AppendLine(CultureInfo.InvariantCulture, $"{Sheets} sheets of four boxes and two cameras under three skies over 250 days, two judged tones each, one judgement in forty two stops out.");
        text.AppendLine();
        text.AppendLine("| what | median | fastest | should be |");
        text.AppendLine("| --- | --- | --- | --- |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| beliefs from the whole history | {whole:0.0} ms | {wholeFastest:0.0} ms | < 50 ms |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| the same with one sheet more | {one:0.0} ms | {oneFastest:0.0} ms | < 50 ms |");
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        marks.Add("learn.native", $"from the whole history, median", $"{whole:0.0} ms", $"", $"{whole:0.0} ms");
        marks.Add("learn.native", $"with one sheet more, median", $"{one:0.0} ms", $"", $"{one:0.0} ms");
        return text.Append(marks).ToString();
    }

    private static Evidence Sheet(int number, double seen) => new()
    {
        Id = string.Create(CultureInfo.InvariantCulture, $"sheet {number:0000}"),
        Kind = EvidenceKind.JudgedSheet,
        At = Now.AddDays(-number / 4.0),
        Box = string.Create(CultureInfo.InvariantCulture, $"box {number / 250}"),
        Camera = number % 3 == 0 ? "Tin" : "Box A",
        Sky = Skies[number % Skies.Length],
        Doublings = number % 8 / 2.0,
        SheetsInBottle = number % 12,
        Tones = [Tone("wall", Rendering.Mid, seen), Tone("doorway", Rendering.OpenShadow, seen + 0.1)],
    };

    private static ToneEvidence Tone(string name, Rendering rendering, double seen) => new()
    {
        Name = name,
        Rendering = rendering,
        Foretold = Stops.Zero,
        Seen = Stops.FromValue(seen),
        Spread = Stops.FromValue(0.35),
        BandLow = Stops.FromValue(-0.5),
        BandHigh = Stops.FromValue(0.5),
    };

    private static (double Median, double Fastest) Times(Func<Beliefs> work)
    {
        work();
        work();
        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[Rounds / 2], times[0]);
    }
}
