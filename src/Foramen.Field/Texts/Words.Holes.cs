using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The hole measured on a scan.</summary>
    public static class Holes
    {
        public const string Title = "Measure the hole";
        public const string Open = "Measure the hole on a scan";
        public const string About = "Scan the plate flat at 2400 dpi or more, lit from behind or over black, and crop it with some plate on every side of the hole.";
        public const string Choose = "Choose a scan";
        public const string Reading = "Reading the scan…";
        public const string Comparing = "Working out the sharpness…";
        public const string Resolution = "Resolution of the scan";
        public const string ResolutionHint = "As the scanner was set; filled in where the file says it";
        public const string NoScan = "Choose a scan first.";
        public const string NoCamera = "The journal knows no such camera.";
        public const string Do = "Measure";
        public const string Use = "Use it from now on";
        public const string UseDetail = "Earlier sheets keep the hole they were made with";
        public const string Diameter = "Diameter";
        public const string DiameterWhy = "Of the circle with the same area: what light goes by. The spread counts noise, blur, what the edge's model leaves out and the scanner's resolution.";
        public const string Roundness = "Roundness";
        public const string Burr = "Burr";
        public const string Light = "Light";
        public const string FNumber = "f-number";
        public const string Best = "Best for this box";
        public const string ChartTitle = "Sharpness";
        public const string ChartAxes = "Contrast that lines keep, against pairs of lines in a millimetre on the paper. Whole line: this hole. Dashed: the best for this box.";

        public static string Millimetres(double value, int decimals = 4) => $"{NumberText.Show(value, decimals)} mm";

        public static string Ratio(double value) => $"{NumberText.Show(value, 3)} (narrowest over widest)";

        public static string BurrOf(HoleMeasurement hole) => hole.Burr.Millimetres > 0 || hole.Notch.Millimetres > 0
            ? $"{Millimetres(hole.Burr.Millimetres, 3)} into the hole, {Millimetres(hole.Notch.Millimetres, 3)} out of it"
            : "none larger than the scan's noise";

        public static string Stops(double value)
        {
            var size = Math.Abs(Math.Round(value, 2));
            return size < 0.005
                ? "as described"
                : string.Create(CultureInfo.CurrentCulture, $"{size:0.00} stops {(value > 0 ? "more" : "less")} than described");
        }

        public static string ScanAlt(HoleMeasurement? hole)
            => hole is null ? "The scan." : $"The hole on the scan with the edge that was found, {NumberText.Show(hole.DiameterPixels, 1)} pixels across.";

        public static string ChartInWords((string Path, double FinestLines) own, (string Path, double FinestLines) best)
            => $"A tenth of the contrast is left at {NumberText.Show(own.FinestLines, 1)} pairs of lines in a millimetre, and at {NumberText.Show(best.FinestLines, 1)} through the best hole.";
    }
}
