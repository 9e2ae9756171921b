using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>A sheet of 80 × 60 pixels of 1.25 mm, 100 mm behind the hole, on which any light can be laid; places are counted in its columns and rows.</summary>
internal static class SmallSheet
{
    public const int Columns = 80;
    public const int Rows = 60;

    // The photograph's width over the sheet's. Of a narrow one the sheet sees more than the photograph shows, eight columns and six rows at each side.
    public const double Wide = 1.5;
    public const double Narrow = 0.8;

    /// <summary>The sheet under a light by column and row, before falloff.</summary>
    public static SheetImage Image(Func<int, int, double> light, double photograph = Wide, SheetAim aim = default)
    {
        var field = PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(2 * Math.Atan(photograph / 2) * 180 / Math.PI));
        var projection = SheetProjection.Of(CameraExamples.Flat(0.35, 100, 100, 75), field, SheetFormat.Level, aim);
        var map = LuminanceMap.FromValues(40, 30, Enumerable.Repeat(1f, 1200).ToArray());
        var image = SheetImage.Make(map, projection, Columns, null, null, TestContext.Current.CancellationToken);
        var lux = new float[Columns * Rows];
        for (var row = 0; row < Rows; row++)
        {
            image.ReadFalloff(row, lux.AsSpan(row * Columns, Columns));
            for (var column = 0; column < Columns; column++)
            {
                lux[(row * Columns) + column] *= (float)light(column, row);
            }
        }

        return image.WithLux(lux);
    }

    /// <summary>From the left edge of a column and the upper edge of a row to those of others.</summary>
    public static RectangleInPhotograph Place(double left, double top, double right, double bottom, double photograph = Wide) => RectangleInPhotograph.FromFractions(
        0.5 + ((left - 40) / (80 * photograph)),
        0.5 + ((top - 30) / (60 * photograph)),
        (right - left) / (80 * photograph),
        (bottom - top) / (60 * photograph));

    public static RegionOnSheet Region(SheetImage image, RectangleInPhotograph place) => RegionOnSheet.Of(image, new MovingRegion("it", place, new GoesAway()));

    /// <summary>Light without falloff at a pixel.</summary>
    public static double LightAt(this SheetImage image, int column, int row)
    {
        var line = new float[Columns];
        image.ReadFalloff(row, line);
        return image.Lux[(row * Columns) + column] / line[column];
    }
}
