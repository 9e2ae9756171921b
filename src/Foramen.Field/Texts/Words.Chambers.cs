using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>A camera's chamber: its depth, its angle and its falloff.</summary>
    public static class Chambers
    {
        public const string Title = "Hole to paper";
        public const string Open = "Hole to paper by two marks";
        public const string About = "Photograph two marks, or a ruler, square to the camera; then measure them on the flat print.";
        public const string Apart = "Marks apart";
        public const string Away = "From the hole to the marks";
        public const string AwayHint = "Straight out along the hole’s axis";
        public const string OnPrint = "Apart on the print";
        public const string Focal = "Hole to paper";
        public const string Angle = "The sheet sees";
        public const string Corners = "In the corners";
        public const string UseDetail = "Earlier sheets keep the distance they were made with";
        public const string FalloffTitle = "Light over the sheet";
        public const string FalloffAxes = "Stops against the middle, as the print is looked at.";

        public static string FocalWhy(CameraDefinition camera, UnitSystem units)
            => $"The box is described with {Lengths.Show(camera.FocalDistanceMillimetres, units)}. By similar triangles: marks on the print, times their distance, over how far apart they are; the spread counts a ruler on the print and a tape in the field.";

        public static string Angles(FieldAngles field) => string.Create(
            CultureInfo.CurrentCulture, $"{field.Horizontal.Degrees:0.0}° wide, {field.Vertical.Degrees:0.0}° high, {field.Diagonal.Degrees:0.0}° corner to corner");

        public static string OpenPart(FalloffMap falloff) => $"{NumberText.Show(100 * falloff.CornerOpenPart, 0)} % of the hole is open{(falloff.CoversCorners ? ": it covers them" : "")}";

        public static string NotCovered(FalloffMap falloff) => "The hole’s edge is too thick for the corners: thin the plate"
            + (falloff.ThickestEdge is { } edge ? $" to {NumberText.Show(edge.Millimetres, 3)} mm or less" : "") + ", or use less of the sheet.";

        public static string Stops(double stops) => stops <= -59 ? "none" : (Math.Abs(stops) < 0.05 ? 0 : stops).ToString("0.0", CultureInfo.CurrentCulture).Replace('-', '−');

        public static string FalloffInWords(FalloffMap falloff)
            => $"From {Stops(falloff.Rows.Max(row => row.Max(stops => stops.Value)))} stops in the lightest cell to {Stops(falloff.Rows.Min(row => row.Min(stops => stops.Value)))} in the darkest.";
    }
}
