using Foramen.Engine.Paper;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>A strip made with flash alone.</summary>
    public static class FlashStrips
    {
        public const string Title = "Read the flash strip";
        public const string Several = "Flash strips";
        public const string First = "First patch that shows";
        public const string Target = "Reading of the white you will flash at";
        public const string TargetHint = "Such as EV 12. Empty: the strip’s own light";
        public const string NoCamera = "There is no camera yet; describe one on the bench, for the flash goes through its hole.";
        public const string Nothing = "Say which patch is the first that shows.";
        public const string Threshold = "First shows after";
        public const string Advised = "Flash for";
        public const string AdvisedWhy = "The strongest flash that changes the unexposed end by half of what is first seen. Its time belongs to this light: the same seconds are a weak flash in shade and one that shows in sun.";
        public const string Apart = "Strip and curve are more than a stop apart; check the light of the flash, or fit the curve to a strip.";
        public const string Gains = "It gains";
        public const string Takes = "It takes";
        public const string ChartTitle = "What a flash gains and takes";
        public const string Keep = "Keep this reading";

        public static string About(StripMade made)
            => $"Judge it dry, in good light. {made.Seconds.Count} patches, {Seconds(made.Seconds[0])} to {Seconds(made.Seconds[^1])}.";

        public static string FirstHint(int patches) => $"{patches + 1} where none shows";

        public static string Seconds(double seconds) => $"{NumberText.Show(seconds, seconds < 100 ? 1 : 0)} s";

        public static string Stops(double stops) => $"{NumberText.Show(stops)} stops";

        public static string Percent(double part) => $"{NumberText.Show(100 * part, 0)} %";

        public static string OfThreshold(double fraction) => $"{Percent(fraction)} of what first shows";

        public static string ThresholdWhy(double againstCurve)
            => $"Between the last patch that does not show and the first that does. By the box’s curve it would be {NumberText.Show(Math.Abs(againstCurve), 1)} stops {(againstCurve > 0 ? "less" : "more")}.";

        public static string Fainter(double stops) => $"tones {NumberText.Show(stops, 1)} stops fainter are seen";

        public static string Cost(PaperKind kind, double density, double contrast)
            => $"{NumberText.Show(density, 3)} of {EndOf(kind)}, and leaves {Percent(contrast)} of the faintest tones’ contrast";

        public static string ChartAxes(PaperKind kind)
            => $"Against the flash in percent of what first shows. Whole line, left: stops by which fainter tones are seen. Dashed, right: density it takes from {EndOf(kind)}. Upright line: the flash to give.";

        public static string ChartInWords(PaperKind kind, double gainAtThreshold, double mostGain, double costAtThreshold, double mostCost)
            => $"At the threshold a flash gains {NumberText.Show(gainAtThreshold, 1)} stops and takes {NumberText.Show(costAtThreshold, 3)} of {EndOf(kind)}; at one and a half thresholds {NumberText.Show(mostGain, 1)} stops and {NumberText.Show(mostCost, 3)}.";

        private static string EndOf(PaperKind kind) => kind == PaperKind.NegativeWorking ? "the paper’s white" : "the deepest black";
    }
}
