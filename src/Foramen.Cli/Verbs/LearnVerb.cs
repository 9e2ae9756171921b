using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Journals;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Learning;
using Foramen.Journal;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen learn</c>: what a journal teaches.</summary>
internal static class LearnVerb
{
    public static Command Create(Page page)
    {
        var journal = new Option<string>("--journal") { Description = "A journal file (JSON lines), as the app exports it.", HelpName = "FILE", Required = true };
        var json = CommonOptions.Json();
        var verb = new Command(
            "learn",
            """
            What a journal teaches: beliefs about paper, meter, light, developer and flash with their spreads, the sheets behind them,
            and whether the odds that were stated meant what they said.

            Try:
              foramen learn --journal demo/canal-basin.foramen.jsonl
            """)
        {
            journal, json,
        };
        verb.SetAction(parsed =>
        {
            var ledger = JournalInput.Read(parsed.GetRequiredValue(journal), page);
            var lessons = LedgerLessons.Of(ledger);

            // The journal's own last instant, so that the same file always teaches the same.
            var asOf = ledger.Entries.InOrder.Select(item => item.Entry.At).DefaultIfEmpty(DateTimeOffset.UnixEpoch).Max();
            var report = Report(ledger, lessons, lessons.BeliefsAsOf(asOf));
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.LearnReport, () => Write(page, report));
        });
        return verb;
    }

    private static LearnReport Report(Ledger ledger, LedgerLessons lessons, Beliefs beliefs) => new()
    {
        Beliefs = [.. beliefs.All.Select(belief => new BeliefReport(
            WordOf(belief.Key.Kind), NameOf(ledger, belief.Key), belief.Mean.Value, belief.Spread.Value, belief.PriorSpread.Value))],
        ScatterFactor = beliefs.ScatterFactor,
        ReadingFactor = beliefs.ReadingFactor,
        Tolerance = beliefs.Tolerance.Factor,
        FrameMishap = lessons.Mishaps.Frame.Fraction,
        MotionMishap = lessons.Mishaps.Motion.Fraction,
        ProcessMishap = lessons.Mishaps.Process.Fraction,
        Evidence = EvidenceOf(ledger, lessons, beliefs),
        LeftOut = lessons.LeftOut,
        Judged = lessons.Keepers.Count,
        Kept = lessons.Keepers.Count(keeper => keeper),
        Odds = lessons.Scores is { } scores ? ScoresReport.Of(scores) : null,
    };

    private static List<EvidenceReport> EvidenceOf(Ledger ledger, LedgerLessons lessons, Beliefs beliefs)
    {
        var reports = new List<EvidenceReport>();
        foreach (var evidence in lessons.Evidence)
        {
            var influence = beliefs.Why(ConditionsOf(evidence), evidence.Doublings, lessons.Evidence.Count).FirstOrDefault(one => one.Evidence.Id == evidence.Id);
            var sheet = ledger.Sheets.Find(lessons.SheetOf[evidence.Id]);
            reports.Add(new EvidenceReport
            {
                Entry = evidence.Id,
                Sheet = sheet?.Started?.Body.Name ?? evidence.Id,
                Box = NameOf(ledger, new BeliefKey(BeliefKind.Speed, evidence.Box)),
                Sky = evidence.Sky,
                ForetoldStops = evidence.Tones.Average(tone => tone.Foretold.Value),
                SeenStops = evidence.Tones.Average(tone => tone.Seen.Value),
                MovedStops = influence?.Moved.Value ?? 0,
                Weight = influence?.Weight ?? 0,
            });
        }

        return reports;
    }

    private static SheetConditions ConditionsOf(Evidence evidence) => new()
    {
        Box = evidence.Box,
        Camera = evidence.Camera,
        Sky = evidence.Sky,
        Metered = evidence.Metered,
        SheetsInBottle = evidence.SheetsInBottle,
    };

    private static string WordOf(BeliefKind kind) => kind switch
    {
        BeliefKind.ShadowEnd => "shadowEnd",
        BeliefKind.HighlightEnd => "highlightEnd",
        _ => kind.ToString().ToLowerInvariant(),
    };

    private static string NameOf(Ledger ledger, BeliefKey key) => key.Kind switch
    {
        BeliefKind.Camera when Ulid.TryParse(key.Of, out var camera) => ledger.Cameras.Find(camera)?.Current.Body.Name ?? key.Of,
        BeliefKind.Speed or BeliefKind.Failure or BeliefKind.ShadowEnd or BeliefKind.HighlightEnd when Ulid.TryParse(key.Of, out var box)
            => ledger.Papers.Find(box)?.Current.Body.Name ?? key.Of,
        _ => key.Of,
    };

    private static void Write(Page page, LearnReport report)
    {
        var culture = CultureInfo.InvariantCulture;
        page.Line(string.Create(culture, $"{report.Judged} sheets judged, {report.Kept} kept; {report.Evidence.Count} teach something of their exposure."));
        page.Line();
        page.Line("Beliefs, in stops against label and description; more is lighter (failure: a doubling of time; ageing: ten sheets)");
        page.Table(
            ["", "of", "best guess", "± 1 sd", "before"],
            report.Beliefs.Select(belief => (IReadOnlyList<string>)
            [
                belief.Kind, belief.Of, belief.Mean.ToString("+0.00;-0.00;0.00", culture), belief.Spread.ToString("0.00", culture), belief.PriorSpread.ToString("0.00", culture),
            ]));
        page.Line();
        page.Line(string.Create(culture, $"Scatter {report.ScatterFactor:0.00} and readings {report.ReadingFactor:0.00} times what is assumed; sheets are kept up to {report.Tolerance:0.00} times as far off as the bands say."));
        page.Line(string.Create(culture, $"Lost to the frame {report.FrameMishap * 100:0} %, to motion {report.MotionMishap * 100:0} %, to processing {report.ProcessMishap * 100:0} % of sheets."));
        page.Line();
        page.Line("Evidence, in stops");
        page.Table(
            ["sheet", "foretold", "seen", "moved the next one", "believed"],
            report.Evidence.Select(one => (IReadOnlyList<string>)
            [
                one.Sheet,
                one.ForetoldStops.ToString("+0.00;-0.00;0.00", culture),
                one.SeenStops.ToString("+0.00;-0.00;0.00", culture),
                one.MovedStops.ToString("+0.00;-0.00;0.00", culture),
                string.Create(culture, $"{one.Weight * 100:0} %"),
            ]));
        foreach (var reason in report.LeftOut)
        {
            page.Line("left out – " + reason);
        }

        if (report.Odds is { } odds)
        {
            page.Line();
            page.Line(string.Create(culture, $"Odds of {odds.Sheets} sheets: Brier {odds.Brier:0.000}, log score {odds.LogScore:0.000}{(odds.IsTelling ? FormattableString.Invariant($", calibration error {odds.CalibrationError:0.000}") : "; too few to tell whether they mean what they say")}."));
        }
    }
}
