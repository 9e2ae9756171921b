using System.Globalization;
using System.Text;
using Foramen.Rehearsal.Runs;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Benchmarks;

/// <summary>How far the advice comes in worlds it does not know: not speed, but it must be reached too. What `./foramen rehearse` plays, with the same seed.</summary>
internal static class RehearsalTable
{
    private const long Seed = 20260509;
    private const int Worlds = 500;
    private const int Sheets = 20;

    public static string Measure()
    {
        var text = new StringBuilder();
        var marks = new MarkRows("any: seed and version decide", load: null);
        text.AppendLine("# Rehearsal: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, `bench/run rehearsal`: what `./foramen rehearse --seed {Seed} --worlds {Worlds}` plays, and the same with `--family held-out`.");
        text.AppendLine("The figures depend on seed and version alone, not on the machine. The usual worlds were looked at (with other seeds) while the advice was built, the");
        text.AppendLine("held-out family only to see its figures. Aimed at: 0.80 of the gap closed and a calibration error under 0.05.");
        foreach (var (name, family) in new[] { ("usual", WorldFamily.Usual), ("held-out", WorldFamily.HeldOut) })
        {
            Console.Error.WriteLine($"Worlds, {name}…");
            var rule = Score("rule-of-thumb", Policy.RuleOfThumb, family);
            var foramen = Score("foramen", Policy.Foramen, family);
            var oracle = Score("oracle", Policy.Oracle, family);
            text.AppendLine();
            text.AppendLine(CultureInfo.InvariantCulture, $"## {Worlds} worlds of {Sheets} sheets, family {name}, seed {Seed}");
            text.AppendLine();
            text.AppendLine(CultureInfo.InvariantCulture, $"| policy | keepers, sheets 1–{RehearsalScore.FirstCounted - 1} | keepers, sheets {RehearsalScore.FirstCounted}–{Sheets} | calibration error | Brier |");
            text.AppendLine("| --- | --- | --- | --- | --- |");
            foreach (var one in new[] { rule, foramen, oracle })
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"| {one.Policy} | {Percent(one.Early.Fraction)} | {Percent(one.Keepers!.Value.Fraction)} ({Percent(one.Interval!.Value.Low.Fraction)} to {Percent(one.Interval!.Value.High.Fraction)}) | {one.Scores?.CalibrationError:0.000} | {one.Scores?.Brier:0.000} |");
            }

            var gap = RehearsalScore.GapClosed(rule.Keepers!.Value, oracle.Keepers!.Value, foramen.Keepers!.Value)!.Value;
            text.AppendLine();
            text.AppendLine(CultureInfo.InvariantCulture, $"Share of the gap closed: {gap:0.000}.");
            marks.Add(
                "rehearsal.gap", $"{name} worlds, seed {Seed}", $"{Percent(foramen.Keepers!.Value.Fraction)}",
                $"{Percent(rule.Keepers!.Value.Fraction)} by rule of thumb, {Percent(oracle.Keepers!.Value.Fraction)} by the oracle", $"{gap:0.000}");
            marks.Add("rehearsal.calibration", $"{name} worlds, seed {Seed}", $"", $"", $"{foramen.Scores!.CalibrationError:0.000}");
        }

        return text.Append(marks).ToString();
    }

    private static RehearsalScore Score(string word, Policy policy, WorldFamily family) => RehearsalScore.Of(word, RehearsalRun.Play(policy, family, Seed, Worlds, Sheets));

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0.0} %");
}
