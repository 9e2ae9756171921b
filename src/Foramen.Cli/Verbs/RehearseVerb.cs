using System.CommandLine;
using System.Globalization;
using System.Text;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Quantities;
using Foramen.Rehearsal.Outside;
using Foramen.Rehearsal.Runs;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen rehearse</c>: outings in simulated worlds, to compare ways of deciding.</summary>
internal static class RehearseVerb
{
    private static readonly (string Word, Policy Policy)[] Policies =
    [
        ("rule-of-thumb", Policy.RuleOfThumb),
        ("foramen", Policy.Foramen),
        ("oracle", Policy.Oracle),
        ("insider", Policy.Insider),
    ];

    public static Command Create(Page page, TextWriter errors)
    {
        var seed = new Option<long>("--seed") { Description = "Where the worlds come from; the same seed gives the same outings.", DefaultValueFactory = _ => 1 };
        var policy = new Option<string?>("--policy") { Description = "rule-of-thumb, foramen, oracle, insider, or all, which is the first three; all where nothing is said.", HelpName = "POLICY" };
        var insider = new Option<bool>("--with-insider") { Description = "With all, the insider too: who knows how worlds are made. Takes some seconds for each world." };
        var sheets = new Option<int>("--sheets") { Description = "Sheets in each outing, 1 to 200.", DefaultValueFactory = _ => 20 };
        var worlds = new Option<int>("--worlds") { Description = "How many worlds, 1 to 100000.", DefaultValueFactory = _ => 100 };
        var family = new Option<string?>("--family") { Description = "usual, or held-out: worlds of other models, which were not looked at while the advice was built.", HelpName = "FAMILY" };
        var photographer = new Option<string?>("--photographer") { Description = "stdio: a program outside decides, by JSON lines on standard input and output (docs/rehearsal.md).", HelpName = "stdio" };
        var world = new Option<string?>("--world") { Description = "stdio: a program outside is the world, by JSON lines on standard input and output.", HelpName = "stdio" };
        var table = new Option<string?>("--out") { Description = "Write the table to this file too (Markdown).", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "rehearse",
            """
            Outings in simulated worlds with a hidden truth: paper that is not what its label says, light that changes, chemistry that tires.
            Says how many sheets each way of deciding keeps, and whether the odds meant what they said.

            Try:
              foramen rehearse --seed 1 --worlds 100
              foramen rehearse --seed 1 --policy foramen --sheets 20 --worlds 500 --family held-out --json
              my-world | foramen rehearse --world stdio --policy foramen --worlds 3
            """)
        {
            seed, policy, insider, sheets, worlds, family, photographer, world, table, json,
        };
        verb.SetAction((parsed, cancellation) => Task.Run(
            () =>
            {
                var count = (int)Guard.Within(parsed.GetValue(worlds), 1, 100_000, "the number of worlds");
                var each = (int)Guard.Within(parsed.GetValue(sheets), 1, 200, "the number of sheets");
                var from = FamilyOf(parsed.GetValue(family));
                var outside = IsOutside(parsed.GetValue(photographer), "--photographer");
                var outsideWorld = IsOutside(parsed.GetValue(world), "--world");
                var chosen = PoliciesOf(parsed.GetValue(policy), parsed.GetValue(insider), outside, outsideWorld);
                var target = parsed.GetValue(table);
                if (target is not null && !Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(target))))
                {
                    throw new RefusalException($"There is no folder to write {target} into; make it first.");
                }

                var scores = new List<RehearsalScore>();
                foreach (var (word, who) in chosen)
                {
                    var progress = page.Progress(word);
                    var played = outside || outsideWorld
                        ? RehearsalRun.PlayOutside(
                            new LineChannel(Console.In, Console.Out), outside ? null : who, outsideWorld ? null : from, parsed.GetValue(seed), count, each, progress, cancellation)
                        : RehearsalRun.Play(who!.Value, from, parsed.GetValue(seed), count, each, progress, cancellation);
                    scores.Add(RehearsalScore.Of(word, played));
                }

                var report = new RehearsalReport
                {
                    Seed = parsed.GetValue(seed),
                    Worlds = count,
                    Sheets = each,
                    Family = outsideWorld ? "outside" : from == WorldFamily.HeldOut ? "heldOut" : "usual",
                    Policies = [.. scores.Select(PolicyReport.Of)],
                    GapClosed = GapOf(scores, "foramen"),
                    InsiderGapClosed = GapOf(scores, "insider"),
                };

                // Lines to and from outside have standard output to themselves.
                var onto = outside || outsideWorld ? new Page(errors, errors) : page;
                onto.Show(parsed.GetValue(json), report, ReportJson.Default.RehearsalReport, () => Write(onto, report));
                if (target is not null)
                {
                    File.WriteAllText(target, Markdown(report));
                }

                return 0;
            },
            cancellation));
        return verb;
    }

    private static WorldFamily FamilyOf(string? text) => text switch
    {
        null or "usual" => WorldFamily.Usual,
        "held-out" => WorldFamily.HeldOut,
        _ => throw new RefusalException($"The family \"{text}\" is not known; it should be usual or held-out."),
    };

    private static bool IsOutside(string? text, string option) => text switch
    {
        null => false,
        "stdio" => true,
        _ => throw new RefusalException($"{option} is \"{text}\"; it should be stdio, or be left out."),
    };

    private static List<(string Word, Policy? Policy)> PoliciesOf(string? text, bool withInsider, bool outside, bool outsideWorld)
    {
        if (withInsider && (outside || outsideWorld || text is not (null or "all")))
        {
            throw new RefusalException("--with-insider goes with all policies in worlds of our own; leave it out, or say --policy all.");
        }

        if (outside)
        {
            return text is null ? [("outside", null)] : throw new RefusalException("A photographer outside and a --policy were both given; leave one out.");
        }

        if (text is null or "all")
        {
            return outsideWorld
                ? throw new RefusalException("A world outside is played by one policy; say --policy rule-of-thumb, foramen or oracle.")
                : [.. Policies.Where(pair => withInsider || pair.Policy != Policy.Insider).Select(pair => (pair.Word, (Policy?)pair.Policy))];
        }

        var known = Array.Find(Policies, pair => pair.Word == text);
        return known.Word is null
            ? throw new RefusalException($"The policy \"{text}\" is not known; it should be rule-of-thumb, foramen, oracle, insider or all.")
            : [(known.Word, known.Policy)];
    }

    private static double? GapOf(List<RehearsalScore> scores, string who)
    {
        Probability? Of(string word) => scores.Find(score => score.Policy == word)?.Keepers;
        return Of("rule-of-thumb") is { } from && Of("oracle") is { } to && Of(who) is { } reached ? RehearsalScore.GapClosed(from, to, reached) : null;
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(RehearsalReport report) => report.Policies.Select(policy => (IReadOnlyList<string>)
    [
        policy.Policy,
        Percent(policy.EarlyKeepers),
        policy.Keepers is { } keepers ? $"{Percent(keepers)} ({Percent(policy.KeepersLow!.Value)} to {Percent(policy.KeepersHigh!.Value)})" : "–",
        policy.Odds is { } odds ? odds.CalibrationError.ToString("0.000", CultureInfo.InvariantCulture) : "–",
        policy.Odds is { } scored ? scored.Brier.ToString("0.000", CultureInfo.InvariantCulture) : "–",
    ]);

    private static string Percent(double share) => (share * 100).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static string[] Headings(RehearsalReport report) => ["policy", "keepers, sheets 1–5", $"keepers, sheets 6–{report.Sheets}", "calibration error", "Brier"];

    private static string Title(RehearsalReport report) => FormattableString.Invariant(
        $"{report.Worlds} worlds of {report.Sheets} sheets, family {report.Family}, seed {report.Seed}");

    private static void Write(Page page, RehearsalReport report)
    {
        page.Line(Title(report));
        page.Table(Headings(report), Rows(report));
        if (report.GapClosed is { } gap)
        {
            page.Line(FormattableString.Invariant($"Foramen's advice closes {gap * 100:0} % of the gap from the rule of thumb to the oracle."));
        }

        if (report.InsiderGapClosed is { } most)
        {
            page.Line(FormattableString.Invariant($"The insider closes {most * 100:0} %: about as far as anyone could who sees no more."));
        }
    }

    private static string Markdown(RehearsalReport report)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"# Rehearsal: {Title(report)}").AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"| {string.Join(" | ", Headings(report))} |");
        text.AppendLine("| --- | --- | --- | --- | --- |");
        foreach (var row in Rows(report))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"| {string.Join(" | ", row)} |");
        }

        if (report.GapClosed is { } gap)
        {
            text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Share of the gap closed: {gap:0.000}.");
        }

        if (report.InsiderGapClosed is { } most)
        {
            text.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"By the insider: {most:0.000}.");
        }

        return text.ToString();
    }
}
