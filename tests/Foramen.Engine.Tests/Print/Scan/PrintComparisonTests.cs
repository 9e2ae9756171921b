using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print.Scan;

public class PrintComparisonTests
{
    private const double Pitch = 0.5;

    // A print of 60 × 40 pixels of half a millimetre whose reflectance tells the pixel.
    private static readonly ScannedPrint Print = Read((column, row) => (20 + (3 * column) + row) / 255.0);

    [Fact]
    public void The_middle_one_and_the_share_within_half_a_stop_are_of_what_is_known()
    {
        var comparison = Made(0, 0, [float.NaN, 0.4f, -0.7f, 0.5f, 2f, float.NaN, -0.5f, -0.9f, 0.1f]);
        Assert.Equal(0.1f, comparison.MedianOff!.Value.Value, 1e-6);
        Assert.Equal(4 / 7.0, comparison.WithinHalfStop, 1e-12);
        var nothing = Made(0, 0, [float.NaN]);
        Assert.Null(nothing.MedianOff);
        Assert.Equal(0, nothing.WithinHalfStop);
    }

    // 128 as predicted, 40 for a stop, held within 1 and 255; 0 is kept for what is not known.
    [Fact]
    public void Differences_are_shown_in_grey()
        => Assert.Equal([128, 168, 108, 0, 255, 1], Made(0, 0, [0, 1, -0.5f, float.NaN, 9, -9]).DifferenceCodes());

    // What was to be at a place lies as far beside it as the whole picture does: right and up in millimetres.
    [Fact]
    public void Density_is_read_where_the_place_came_to_lie() => Gen.Select(Gen.Int[5, 50], Gen.Int[5, 34], Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((column, row, right, up) =>
    {
        var comparison = Made(right, up, [0]);
        var place = SheetPoint.FromMillimetres(((column - 29.5) * Pitch) - right, ((19.5 - row) * Pitch) - up);

        // Half a pixel around is widened to three quarters: the pixel itself.
        Assert.Equal(-Math.Log10((20 + (3 * column) + row) / 255.0), comparison.DensityAround(place, Length.FromMillimetres(0.25))!.Value.Value, 1e-4);
    });

    [Fact]
    public void A_wider_reading_is_a_mean_of_more_and_beyond_the_sheet_there_is_none()
    {
        var comparison = Made(0, 0, [0]);
        var spot = Read((column, row) => (column, row) is (30, 20) ? 0.9 : 0.1);
        Assert.Equal(1, new PrintComparison(default, 1, 0, 0, spot, [0]) { MillimetresPerPixel = Pitch }.DensityAround(At(0.25, -0.25), Mm(1.5))!.Value.Value, 0.01);
        Assert.Null(comparison.DensityAround(At(40, 0), Mm(1)));
    }

    // A sheet of a few millimetres is read in many pixels to the millimetre: no tone asks for more around it than can be read.
    [Fact]
    public void On_a_tiny_sheet_a_tone_is_read_as_far_around_as_can_be()
    {
        var comparison = new PrintComparison(default, 1, 0, 0, Read((_, _) => 0.5), [0]) { MillimetresPerPixel = 0.01 };
        Assert.Equal(-Math.Log10(128 / 255.0), comparison.DensityAround(At(0, 0), Mm(1.5))!.Value.Value, 1e-4);
    }

    // A picture that lies to the right comes of a camera aimed to the left: 60 mm · tan 1° = 1.0473 mm.
    [Fact]
    public void The_camera_was_aimed_the_other_way()
    {
        var (right, up) = Made(1.0473, -2 * 1.0473, [0]).AimedOffDegrees(Flat(0.35, 60, 100, 80));
        Assert.Equal(-1, right, 1e-4);
        Assert.Equal(Math.Atan(2 * Math.Tan(Math.PI / 180)) * 180 / Math.PI, up, 1e-4);
    }

    [Fact]
    public void A_tone_is_read_where_the_sheet_sees_it_and_one_without_a_place_is_not()
    {
        var curve = LogisticCurve.FromRange(PaperKind.DirectPositive, Density.FromValue(0.06), Density.FromValue(1.8), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));
        var projection = SheetProjection.Of(Flat(0.35, 60, 30, 20), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(90)));
        var comparison = Made(0, 0, [0]);
        Tone At(PhotographPosition? position) => new()
        {
            Name = "wall", Rendering = Rendering.Mid, Luminance = Luminance.FromCandelasPerSquareMetre(100), MeterSpread = Stops.FromValue(0.3), Position = position,
        };

        // In the middle of the sheet the reflectance is (20 + 3 · 29.5 + 19.5)/255, to the left of it and above it less.
        var middle = comparison.ToneAt(At(PhotographPosition.FromFractions(0.5, 0.5)), projection, curve)!;
        Assert.Equal(-Math.Log10(128 / 255.0), middle.Density.Value, 1e-3);
        Assert.Equal(MeasuredTone.Of(curve, Rendering.Mid, middle.Density), middle);
        Assert.Null(comparison.ToneAt(At(null), projection, curve));
        Assert.Null(comparison.ToneAt(At(PhotographPosition.FromFractions(0.05, 0.5)), projection, curve));
    }

    private static PrintComparison Made(double right, double up, float[] stops) => new(new PrintLie(0, false), 0.9, right, up, Print, stops) { MillimetresPerPixel = Pitch };

    private static ScannedPrint Read(Func<int, int, double> reflectance)
    {
        var scan = ScanPictures.Draw(60, 40, reflectance);
        return ScannedPrint.Read(new PrintSetting(scan, ScanPictures.Whole(scan), ScanPictures.LightIsReflectance, null), new PrintLie(0, false), 60, 40);
    }
}
