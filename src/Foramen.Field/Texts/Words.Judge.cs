using System.Globalization;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Judge step.</summary>
    public static class Judge
    {
        public const string Whole = "The print as a whole";
        public const string Negative = "Judge the picture turned into a positive: what is light in it got much light.";
        public const string Wrong = "What went wrong?";
        public const string AddPicture = "Photograph the print";
        public const string OtherPicture = "Another photograph of the print";
        public const string PictureAlt = "The print";
        public const string Note = "Note";
        public const string Worth = "Worth keeping?";
        public const string Save = "Judge it so";
        public const string SayFirst = "First say whether it is worth keeping";
        public const string Again = "Judge it again";
        public const string NextTitle = "Next time, in the same light";
        public const string NoAdvice = "Without a plan there is no time to correct.";
        public const string NextSheet = "Load the next sheet";

        public static string Darker(string tone) => $"{tone}: half a stop darker than wanted";

        public static string Lighter(string tone) => $"{tone}: half a stop lighter than wanted";

        public static string Wanted(WantedRendering wanted) => wanted switch
        {
            WantedRendering.OpenShadow => "wanted dark, with detail",
            WantedRendering.Mid => "wanted in the middle",
            WantedRendering.TexturedHighlight => "wanted light, with detail",
            WantedRendering.MayBurn => "was allowed to burn",
            _ => "was allowed to block",
        };

        public static string Stops(ToneFate? lost, double lighterByStops) => (lost, lighterByStops) switch
        {
            (ToneFate.Burnt, _) => $"Burnt, at least {Amount(lighterByStops)} too light",
            (ToneFate.Blocked, _) => $"Blocked, at least {Amount(lighterByStops)} too dark",
            (_, > 0) => $"{Amount(lighterByStops)} too light",
            (_, < 0) => $"{Amount(lighterByStops)} too dark",
            _ => "As wanted",
        };

        public static string Fate(ToneFate fate) => fate == ToneFate.Burnt ? "Burnt out" : "Blocked up";

        public static string Cause(MishapCause cause) => cause switch
        {
            MishapCause.Frame => "Frame",
            MishapCause.Motion => "Motion",
            MishapCause.Light => "Light",
            MishapCause.Process => "Process",
            MishapCause.Leak => "Stray light",
            _ => "Other",
        };

        public static string Advice(MishapCause cause) => cause switch
        {
            MishapCause.Frame => "Frame: leave more margin, and check the camera's marks against a photograph.",
            MishapCause.Motion => "Motion: weigh the camera down, or wait for a lull.",
            MishapCause.Light => "Light: it changed or was misread, so the time above may be wrong. Read it again first.",
            MishapCause.Process => "Process: the baths may be to blame rather than the time. Check temperature and strength of the developer before you change the time.",
            MishapCause.Leak => "Stray light: it darkens or fogs whatever the time. Check the camera's seams and the loading.",
            _ => "Other: the note says what.",
        };

        public static string InsteadOf(double seconds) => $"instead of {TimeText.Spoken(seconds)}, with the same flash";

        public static string Off(double lighterByStops, bool atLeast) => Math.Abs(lighterByStops) < 0.05
            ? "On the whole it came out as wanted."
            : $"On the whole {(atLeast ? "at least " : "")}{Amount(lighterByStops)} too {(lighterByStops > 0 ? "light" : "dark")}.";

        public static string Apart(double stops) => $"The tones lie {Amount(stops)} apart: time alone cannot right that. Another flash, or another paper, changes the contrast.";

        private static string Amount(double stops)
        {
            var amount = Math.Abs(stops);
            return Math.Abs(amount - 0.5) < 0.05 ? "half a stop"
                : Math.Abs(amount - 1) < 0.05 ? "1 stop"
                : string.Create(CultureInfo.CurrentCulture, $"{amount:0.#} stops");
        }
    }
}
