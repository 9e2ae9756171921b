using System.Globalization;
using Foramen.Engine.Learning;
using Foramen.Field.Time;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The card after a judged sheet.</summary>
    public static class Reshoot
    {
        public const string WorthTitle = "Worth another sheet?";
        public const string SheetsLeft = "Sheets left";
        public const string SubjectsLeft = "Other subjects today";
        public const string Count = "A whole number from 0 to 500.";
        public const string Taught = "What this sheet taught";

        public static string InsteadOf(ReshootAdvice advice)
            => advice.ChangesTime ? $"instead of {TimeText.Spoken(advice.Given.Time.Seconds)}" : "as before, near enough";

        public static string Unchanged(double odds) => string.Create(CultureInfo.CurrentCulture, $"{100 * odds:0} % exposed as before");

        public static IEnumerable<string> Changes(ReshootAdvice advice)
        {
            yield return advice.ChangesTime
                ? string.Create(CultureInfo.CurrentCulture, $"Time: {Math.Abs(advice.Change.Value):0.0} stops {(advice.Change.Value > 0 ? "more" : "less")} exposure, the paper’s failure counted in.")
                : "Time: keep it; the change would be too small to see.";
            if (advice.ChangesFlash)
            {
                yield return advice.Next.Flash.Seconds > 0
                    ? $"Flash: {Plan.TimeShown(advice.Next.Flash.Seconds)} instead of {(advice.Given.Flash.Seconds > 0 ? Plan.TimeShown(advice.Given.Flash.Seconds) : "none")}."
                    : "Flash: leave it out.";
            }

            if (advice.Reframe)
            {
                yield return "Frame: frame it anew, with more margin.";
            }

            if (advice.Wait)
            {
                yield return "Wait: for the light to hold still, or for what moved to be gone; then read the tones again.";
            }
        }

        public static string Worth(ReshootAdvice advice, bool wasKeeper, int? sheetsLeft) => (wasKeeper, sheetsLeft, advice.IsWorthASheet) switch
        {
            (true, _, _) => "You have this one. Keep the sheet for another subject.",
            (_, null, _) => "Say how many sheets are left to hear whether it is.",
            (_, 0, _) => "There is no sheet left.",
            (_, _, true) when advice.WorthElsewhere.Fraction == 0 => string.Create(CultureInfo.CurrentCulture, $"Yes: {100 * advice.Odds.Total.Fraction:0} % here, and no other subject waits for the sheet."),
            (_, _, true) => string.Create(CultureInfo.CurrentCulture, $"Yes: {100 * advice.Odds.Total.Fraction:0} % here against {100 * advice.WorthElsewhere.Fraction:0} % that a sheet is worth elsewhere."),
            _ => string.Create(CultureInfo.CurrentCulture, $"Better not: {100 * advice.Odds.Total.Fraction:0} % here, and a sheet is worth {100 * advice.WorthElsewhere.Fraction:0} % elsewhere."),
        };
    }
}
