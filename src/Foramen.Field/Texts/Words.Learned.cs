using System.Globalization;
using Foramen.Engine.Learning;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>What the sheets taught.</summary>
    public static class Learned
    {
        public const string Title = "What your sheets taught";
        public const string None = "No sheet has been judged yet. Each one that is makes the next plan better.";
        public const string Open = "What they taught";
        public const string NoSheets = "No judged sheet moved this; it is what label and description say.";
        public const string HardlyBelieved = ", hardly believed beside the others";
        public const string HitTitle = "Your keepers over time";
        public const string HitAxes = "Keepers among the last ten sheets, percent, sheet by sheet; the band is where the share may well lie.";
        public const string OddsTitle = "Did the odds mean what they said?";
        public const string OddsAxes = "Share kept, percent, against the odds that were stated, percent. On the slanted line they mean what they say; bars show where the share may well lie.";
        public const string OddsNone = "No judged sheet had odds in its plan yet.";
        public const string BeliefsTitle = "What is believed now";
        public const string BeliefsAxes = "In stops against label and description; to the right is lighter. The thin line is what was thought possible before, the thick one what still is (one standard deviation).";
        public const string LostTitle = "What else spoils a sheet";
        public const string LeftOut = "Judged sheets that teach nothing of their tones";
        public const string Behind = "The sheets behind it";
        public const string Limits = "Bands and spreads before the first sheet are assumptions. What only ever acts together, such as speed and meter, is known as a sum; each alone stays unsure.";
        public const string Scatter = "Sheet to sheet";

        public static string Reading(int left) => left > 0
            ? string.Create(CultureInfo.CurrentCulture, $"Reading your sheets: {left:N0} to go.")
            : "Reading your sheets.";

        public static string Headline(int judged, int kept) => judged == 0 ? None
            : string.Create(CultureInfo.CurrentCulture, $"{judged} {(judged == 1 ? "sheet" : "sheets")} judged, {kept} kept.");

        public static string Brief(int teaching) => teaching switch
        {
            0 => "Planned by label and description; no judged sheet yet.",
            1 => "Planned with what 1 judged sheet taught.",
            _ => string.Create(CultureInfo.CurrentCulture, $"Planned with what {teaching} judged sheets taught."),
        };

        public static string Moved(double stops) => $"{Signed(stops)} {(stops < 0 ? "darker" : "lighter")}";

        public static string Expected(double mean, double spread)
            => string.Create(CultureInfo.CurrentCulture, $"{Against(mean, "by the label")}, ± {Math.Abs(spread):0.0} stops");

        public static string Change((double Mean, double Spread) before, (double Mean, double Spread) after)
            => $"Before this sheet: {Expected(before.Mean, before.Spread)}. Now: {Expected(after.Mean, after.Spread)}.";

        private static string Against(double stops, string what) => Math.Abs(stops) < 0.05 ? $"as light as {what}" : $"{Moved(stops)} than {what}";

        public static string Name(BeliefKind kind, string of) => kind switch
        {
            BeliefKind.Speed => $"{of}: speed",
            BeliefKind.Failure => $"{of}: failure",
            BeliefKind.ShadowEnd => $"{of}: shadows",
            BeliefKind.HighlightEnd => $"{of}: highlights",
            BeliefKind.Camera => $"{of}: the hole",
            BeliefKind.Meter => "Your meter",
            BeliefKind.Light => $"Light: {of}",
            BeliefKind.Ageing => $"A tired developer, {of}",
            _ => "The flash",
        };

        public static string Unit(BeliefKind kind) => kind switch
        {
            BeliefKind.Failure => " for each doubling of the time",
            BeliefKind.Ageing => " for ten sheets",
            _ => "",
        };

        public static string Value(Belief belief)
            => string.Create(CultureInfo.CurrentCulture, $"{belief.Mean.Value:+0.00;−0.00;0.00} ± {belief.Spread.Value:0.00} stops{Unit(belief.Key.Kind)} (before: ± {belief.PriorSpread.Value:0.00})");

        public static string ScatterLine(double scatter, double readings, double tolerance) => string.Create(
            CultureInfo.CurrentCulture,
            $"Your sheets scatter {scatter:0.0} times and your readings {readings:0.0} times as much as is assumed; you keep sheets up to {tolerance:0.0} times as far off as the bands say.");

        public static string Lost(double frame, double motion, double process) => string.Create(
            CultureInfo.CurrentCulture, $"Frame {100 * frame:0}\u00A0%, motion {100 * motion:0}\u00A0%, processing {100 * process:0}\u00A0% of sheets (begun at 5, 4 and 2, as if from twenty sheets).");

        public static string HitInWords(int sheets, double share) => string.Create(CultureInfo.CurrentCulture, $"Of the last {sheets} sheets {100 * share:0} % were kept.");

        public static string Scores(ForecastScores scores) => string.Create(
            CultureInfo.CurrentCulture,
            $"{scores.Sheets} sheets with odds. Brier score {scores.Brier:0.00} (0 is best; always saying your share of keepers scores {scores.Uncertainty:0.00}).{(scores.IsTelling ? FormattableString.Invariant($" Odds and share kept lie {100 * scores.CalibrationError:0} points apart on average.") : FormattableString.Invariant($" From {ForecastScores.FewestForDiagram} sheets on it tells whether they mean what they say; until then chance speaks louder."))}");

        public static string ForetoldAndSeen(double foretold, double seen)
            => $"by the label {Against(foretold, "wanted")}, seen {Against(seen, "wanted")}";

        public static string Part(OddsPart part) => part switch
        {
            OddsPart.Paper => "paper and flash",
            OddsPart.Meter => "meter and readings",
            OddsPart.Light => "light",
            OddsPart.Frame => "framing",
            OddsPart.Process => "processing",
            OddsPart.Motion => "motion",
            _ => "the range of the scene",
        };

        private static string Signed(double stops)
        {
            var amount = Math.Abs(stops);
            return string.Create(CultureInfo.CurrentCulture, $"{amount:0.0} {(Math.Abs(amount - 1) < 0.05 ? "stop" : "stops")}");
        }
    }
}
