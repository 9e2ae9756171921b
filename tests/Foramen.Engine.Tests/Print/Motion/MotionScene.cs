using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>Rendered scenes before Box A, with what moves in the middle.</summary>
internal static class MotionScene
{
    public const int Width = 400;
    public const int Height = 300;

    public static RectangleInPhotograph Middle { get; } = RectangleInPhotograph.FromFractions(0.35, 0.3, 0.3, 0.4);

    public static SheetProjection Straight { get; } = SheetProjection.Of(
        CameraExamples.BoxA, PhotographField.FromHorizontalAngle(Width, Height, Angle.FromDegrees(90)), SheetFormat.Level);

    public static Duration S(double seconds) => Duration.FromSeconds(seconds);

    public static SheetExposure For(double seconds) => new(S(seconds), default);

    /// <summary>A scene by the luminance at each place of the photograph.</summary>
    public static LuminanceMap Map(Func<double, double, double> luminance)
    {
        var values = new float[Width * Height];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (float)luminance(((i % Width) + 0.5) / Width, ((i / Width) + 0.5) / Height);
        }

        return LuminanceMap.FromValues(Width, Height, values);
    }

    public static SheetImage Image(LuminanceMap map, PointSpread? spread = null)
        => SheetImage.Make(map, Straight, 320, spread, null, TestContext.Current.CancellationToken);

    /// <summary>A six-spoked wheel in the middle's ellipse, turned so many degrees with the clock: spokes 3, ground 1, cd/m² × 1000, with soft edges so that pixels can follow.</summary>
    public static LuminanceMap Wheel(double degrees) => Map((x, y) =>
    {
        var (u, v) = ((x - 0.5) / 0.15, (y - 0.5) / 0.2);
        if ((u * u) + (v * v) > 1)
        {
            return 1000;
        }

        var phase = (Math.Atan2(v, u) * 180 / Math.PI) - degrees;
        return 1000 * (2 + Math.Cos(6 * phase * Math.PI / 180));
    });

    public static (MovingRegion Region, MotionCourse Course) Moving(RegionMotion motion, MotionCourse course, RectangleInPhotograph? place = null)
        => (new MovingRegion("the wheel", place ?? Middle, motion), course);

    /// <summary>The image with the motion, and what is left of it.</summary>
    public static (SheetImage Image, IReadOnlyList<RegionTrace> Traces) Moved(SheetImage image, PaperResponse response, double seconds, params (MovingRegion Region, MotionCourse Course)[] regions)
        => Moved(image, response, seconds, null, regions);

    public static (SheetImage Image, IReadOnlyList<RegionTrace> Traces) Moved(
        SheetImage image, PaperResponse response, double seconds, Length? spot, params (MovingRegion Region, MotionCourse Course)[] regions)
    {
        var motion = MotionOnSheet.Of(image, [.. regions.Select(region => region.Region)], spot);
        MotionCourse[] courses = [.. regions.Select(region => region.Course)];
        return (motion.Expose(courses, response, S(seconds)), motion.Traces(courses, response, For(seconds), FlashSetup.None));
    }

    /// <summary>Pixels of the middle's ellipse, a few pixels within its rim and off its hub.</summary>
    public static IEnumerable<int> Inside(SheetImage image, double from = 0.25, double to = 0.9)
    {
        for (var i = 0; i < image.Lux.Length; i++)
        {
            var place = SheetPoint.FromMillimetres(image.Grid.XMillimetres(i % image.Grid.Width), image.Grid.YMillimetres(i / image.Grid.Width));
            if (image.Projection.PositionOf(image.Projection.SheetPointAt(place)) is not { } at)
            {
                continue;
            }

            var radius = Math.Sqrt(Math.Pow((at.X - 0.5) / 0.15, 2) + Math.Pow((at.Y - 0.5) / 0.2, 2));
            if (radius >= from && radius <= to)
            {
                yield return i;
            }
        }
    }
}
