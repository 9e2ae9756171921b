using System.Globalization;
using Foramen.Engine.Print;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>A finished print measured on its picture.</summary>
    public static class Measured
    {
        public const string Open = "Measure it on the picture";
        public const string About = "Lay the dry print flat on plain grey or white ground with a finger's breadth to spare, in even light without a reflection. Densities are to be trusted to about 1.7.";
        public const string Ground = "Density of the ground";
        public const string GroundHint = "White writing paper is about 0.08, a grey card 0.75";
        public const string GroundOf = "the ground's density";
        public const string Rim = "Unexposed rim of the sheet";
        public const string RimOf = "the rim, mm";
        public const string Do = "Measure";
        public const string Again = "Measure again";
        public const string Busy = "Measuring…";
        public const string Stopped = "Stopped; nothing was measured.";
        public const string NotHere = "The picture of the print is not on this device.";
        public const string NoPhotograph = "Measuring needs the photograph of the subject, its frame and a reading, because the tones are found by them.";
        public const string Picture = "The picture of the print. Touch a corner of the sheet, or move with the arrow keys and press Enter.";
        public const string TouchAnew = "Touch the corners myself";
        public const string Difference = "Where it came out lighter or darker than predicted";
        public const string DifferenceHow = "Middle grey is as predicted; lighter is lighter, darker is darker, up to three stops. Black cannot be told.";
        public const string Tone = "Tone";
        public const string Density = "Density";
        public const string Off = "From what was wanted";
        public const string Take = "Take these into the judgement";
        public const string Taken = "Taken into the judgement above. Change what you see better.";
        public const string ClippedLight = "The lightest parts of the picture are clipped to white, so they read too dark; take it again darker.";
        public const string ClippedDark = "The darkest parts of the picture are clipped to black, so they read too light; take it again lighter.";
        public const string OneDensity = "Only the ground's density is known, so flare is not corrected and deep blacks read too light.";
        private const double LeastSd = 0.05;
        private static readonly string[] Corners = ["upper left", "upper right", "lower right", "lower left"];

        public static string TouchNext(int corner) => $"Touch the {Corners[corner]} corner of the sheet.";

        public static string DensityOf(MeasuredTone? tone) => tone is null
            ? "beside the sheet, or read by hand"
            : string.Create(CultureInfo.CurrentCulture, $"{tone.Density.Value:0.00} ± {tone.DensitySd:0.00}");

        public static string OffBy(MeasuredTone tone) => tone.FromAim is not { } off ? "free"
            : Math.Abs(off.Value) < 0.05 ? "as wanted"
            : string.Create(CultureInfo.CurrentCulture, $"{Math.Abs(off.Value):0.0} ± {Math.Max(LeastSd, tone.FromAimSd!.Value.Value):0.0#} stops {(off.Value > 0 ? "lighter" : "darker")}");

        public static string Middle(PrintComparison print) => print.MedianOff is { } off
            ? string.Create(
                CultureInfo.CurrentCulture,
                $"In the middle of its tones the print is {Apart(off.Value)} predicted; {print.WithinHalfStop * 100:0} % of what can be told is within half a stop.")
            : "Nowhere do both prints show a tone, so the difference cannot be told.";

        public static string Aimed(double right, double up) => Math.Abs(right) < 0.15 && Math.Abs(up) < 0.15
            ? "The camera was aimed as planned."
            : string.Create(
                CultureInfo.CurrentCulture, $"The camera was aimed {Math.Abs(right):0.0}° too far {(right > 0 ? "right" : "left")} and {Math.Abs(up):0.0}° too {(up > 0 ? "high" : "low")}.");

        public static string Sharpness(PrintComparison print) => print.Sharpness switch
        {
            null => "It has too little detail to say how sharp it is.",
            { ExtraSpreadMillimetres: { } soft } => string.Create(CultureInfo.CurrentCulture, $"It is softer than predicted, by a spread of {soft:0.00} mm; the picture of it has a part in that."),
            _ => "It is as sharp as predicted, as far as its detail tells.",
        };

        private static string Apart(double stops) => Math.Abs(stops) < 0.05
            ? "as"
            : string.Create(CultureInfo.CurrentCulture, $"{Math.Abs(stops):0.0} stops {(stops > 0 ? "lighter" : "darker")} than");
    }
}
