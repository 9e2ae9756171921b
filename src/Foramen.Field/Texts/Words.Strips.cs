using Foramen.Engine.Paper;
using Foramen.Field.Units;
using Foramen.Journal.Fold;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Test strips on the bench.</summary>
    public static class Strips
    {
        public const string Title = "Strips";
        public const string Plan = "Plan a strip";
        public const string Read = "Read the strip";
        public const string Unknown = "The journal knows no such strip.";
        public const string UnknownBox = "The journal knows no such box of paper.";
        public const string Purpose = "It is for";
        public const string ForCurve = "speed and contrast";
        public const string ForFlash = "the flash";
        public const string LightFrom = "The light falls";
        public const string ThroughHole = "through the hole";
        public const string UnderLamp = "straight on it";
        public const string Reading = "Meter reading of the white surface";
        public const string ReadingHint = "Fill the hole’s view with it. Such as EV 13, or f/16 1/125 s ISO 100";
        public const string Camera = "Camera";
        public const string NoCamera = "There is no camera yet; describe one on the bench, or let the light fall straight on the strip.";
        public const string Lux = "Light on the strip";
        public const string Colour = "Colour of the light";
        public const string Way = "How to make the steps";
        public const string ByHole = "close the hole";
        public const string ByCovering = "cover";
        public const string ByUncovering = "uncover";
        public const string First = "First patch";
        public const string Ratio = "Step";
        public const string Count = "Patches";
        public const string ToDo = "What to do";
        public const string Made = "It is made";
        public const string ReadHow = "Wash it, dry it, and look at it in good light. What you cannot say may stay empty: three densities, or first tone, last tone and a match, are the least.";
        public const string ByEye = "By eye";
        public const string FirstTone = "First patch that shows";
        public const string LastTone = "Last patch you can tell from the next";
        public const string Match = "Patch like the grey";
        public const string Grey = "Density of the grey";
        public const string GreyHint = "0.75 is a metered grey card";
        public const string Densities = "Densities";
        public const string By = "Read with";
        public const string GreyScale = "a grey scale";
        public const string Densitometer = "a densitometer";
        public const string AScan = "a scan";
        public const string Masked = "Masked, no light";
        public const string Nothing = "Nothing is typed yet; say at least three densities, or what the eye found.";
        public const string Write = "Write it down";
        public const string ChartTitle = "Curve of the paper";
        public const string ChartAxes = "Density against lg of the effective exposure, lx s. The band holds the curve nine times in ten.";
        public const string Index = "Exposure index";
        public const string IsoSpeed = "ISO paper speed";
        public const string IsoWhy = "In lamp light at a second, by ISO 6846: brought there from your light and time, so its doubt is larger.";
        public const string Range = "Range";
        public const string NoRange = "The strip does not reach both ends of the tones, so it does not tell the range; the box keeps the range it has.";
        public const string Use = "Use this for the box";
        public const string UseDetail = "Plans from here on count with it and its doubt";
        public const string Used = "The box is described by its strips now.";
        public const string Next = "What strip next";
        public const string FirstStrip = "Make a first strip: eight patches half a stop apart, around the time you would have given.";
        public const string ForFailure = "To tell failure from speed:";
        public const string FailureIs = "Failure exponent";
        public const string Advising = "Looking for the most telling strip…";
        public const string PlanForFailure = "Plan that dimmer strip";
        public const string OnBench = "Test strips";

        public static string Before(StripWay way) => "Keep one more patch masked from all light. " + (way == StripWay.Uncovering
            ? "Begin with all patches covered but the last."
            : "Begin with all patches uncovered.");

        public static string Move(StripWay way, StripMove move) => $"{Seconds(move.Light.Seconds)} of light" + (way, move.CardPatch) switch
        {
            (_, null) => ", then end it",
            (StripWay.HoleAsShutter, { } patch) => $", close, cover patch {patch}, open",
            (StripWay.Covering, { } patch) => $", then cover patch {patch}",
            (_, { } patch) => $", then uncover patch {patch}",
        };

        public static string Patch(int number, double seconds) => $"Patch {number}, {Seconds(seconds)}";

        public static string Number(double value, int decimals) => NumberText.Show(value, decimals);

        public static string Interval(Estimate estimate, int decimals) => $"{Number(estimate.Low, decimals)} to {Number(estimate.High, decimals)}, nine times in ten";

        public static string IndexWhy(IndexEstimate index)
            => $"Set this on a meter at {Seconds(index.At.Seconds)} in this light ({index.Light.Name}). Speed known to ± {Number(index.Spread.Value, 2)} stops, the doubt about the light included.";

        public static string RangeStops(double range) => $"{Number(range / (100 * Math.Log10(2)), 1)} stops";

        public static string RangeInterval(Estimate range) => $"{RangeStops(range.Low)} to {RangeStops(range.High)}, nine times in ten";

        public static string RangeWhy(double range) => $"R {Number(range, 0)}: from the first tone that shows to nine tenths of full black, by ISO 6846 (mirrored for direct-positive paper).";

        public static string FailureLaw(FailureEstimate failure) => failure.Law is SchwarzschildFailure law ? $"p {Number(law.Exponent, 2)}" : failure.Law.Describe();

        public static string FailureFrom(FailureEstimate failure) => failure.IsAssumed ? "assumed" : "by your strips";

        public static string? FailureSpread(FailureEstimate failure) => failure.Law is SchwarzschildFailure ? Number(failure.SpreadPerDoubling, 3) : null;

        public static string Failure(FailureEstimate failure) => (failure switch
        {
            { IsAssumed: false } => "Your strips in different light say it: ",
            { HasSeveralLights: true } => "It is still assumed: your strips are in different light, but do not tell it well enough yet. ",
            _ => "It is still assumed, because strips in one light cannot tell failure from speed. ",
        }) + failure.Law.Describe();

        public static string Of(StripRecord strip)
        {
            var made = strip.Made!.Body;
            var span = $"{made.Seconds.Count} patches, {Seconds(made.Seconds[0])} to {Seconds(made.Seconds[^1])}";
            return strip.Read is null ? $"{span}: not read yet" : $"{span}: read";
        }

        public static string ChartInWords(StripFit fit)
            => $"Density goes from {Number(fit.Curve.UnexposedDensity.Value, 2)} to {Number(fit.Curve.MinimumDensity.Value + fit.Curve.MaximumDensity.Value - fit.Curve.UnexposedDensity.Value, 2)}; its middle lies at {Number(fit.Curve.MidLgExposure, 2)} lg lux seconds, {fit.FittedPatches.Count} readings.";

        private static string Seconds(double seconds) => $"{Number(seconds, seconds < 100 ? 1 : 0)} s";
    }
}
