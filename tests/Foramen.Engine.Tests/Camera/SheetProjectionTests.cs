using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class SheetProjectionTests
{
    // 90 degrees from left to right: a thousand pixels to the edge, a thousand to the picture plane.
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(90));

    private static readonly Gen<SheetAim> AnyAim = Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20])
        .Select((pan, tilt) => SheetAim.FromAngles(Angle.FromDegrees(pan), Angle.FromDegrees(tilt)));

    [Fact]
    public void A_place_in_the_photograph_is_found_again_from_the_sheet() => Gen.Select(
        AnyPoint, AnyAim, Gen.Double[-20, 20], Gen.Bool).Sample((place, aim, tilt, upright) =>
        {
            var (camera, point) = place;
            var format = upright ? SheetFormat.Upright : SheetFormat.Level;
            var projection = SheetProjection.Of(camera.TiltedTo(Angle.FromDegrees(tilt)), Wide, format, aim);
            var inside = At(point.XMillimetres * 0.999, point.YMillimetres * 0.999);
            if (projection.PositionOf(inside) is not { } position)
            {
                return;
            }

            var back = projection.PointOf(position);
            Assert.NotNull(back);
            Assert.Equal(inside.XMillimetres, back.Value.XMillimetres, 1e-6);
            Assert.Equal(inside.YMillimetres, back.Value.YMillimetres, 1e-6);
        });

    // Similar triangles: 30 mm right and 20 mm up at 60 mm are half and a third of the way to the picture plane.
    [Fact]
    public void Straight_ahead_it_is_similar_triangles()
    {
        var position = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide).PositionOf(At(30, 20));
        Assert.NotNull(position);
        Assert.Equal(0.5 + (0.5 * 1000 / 2000), position.Value.X, 1e-12);
        Assert.Equal(0.5 - (1.0 / 3 * 1000 / 1500), position.Value.Y, 1e-12);
    }

    // Paper about the hole: arc by angle, tan 0.5 rad = 0.5463.
    [Fact]
    public void Curved_paper_counts_angles()
    {
        var position = SheetProjection.Of(Curved(0.3, 50, 50, 60, 40), Wide).PositionOf(At(25, 0));
        Assert.NotNull(position);
        Assert.Equal(0.5 + (0.54630 / 2), position.Value.X, 1e-5);
    }

    // Turned 20° right, the middle of the sheet sees what lies 20° to the right, tan 20° = 0.36397; tilted 20° up, the same upwards.
    [Fact]
    public void Pan_goes_right_and_tilt_goes_up()
    {
        var camera = Flat(0.35, 60, 100, 80);
        var right = SheetProjection.Of(camera, Wide, null, SheetAim.FromAngles(Angle.FromDegrees(20))).PositionOf(SheetPoint.Middle);
        var up = SheetProjection.Of(camera.TiltedTo(Angle.FromDegrees(20)), Wide).PositionOf(SheetPoint.Middle);
        Assert.Equal(0.5 + (0.36397 / 2), right!.Value.X, 1e-5);
        Assert.Equal(0.5, right.Value.Y, 1e-12);
        Assert.Equal(0.5 - (0.36397 * 1000 / 1500), up!.Value.Y, 1e-5);
        Assert.Equal(0.5, up.Value.X, 1e-12);
    }

    // A camera and a photograph tilted alike see alike.
    [Fact]
    public void Only_the_difference_of_tilts_counts() => Gen.Select(AnyPoint, Gen.Double[-30, 30]).Sample((place, tilt) =>
    {
        var level = SheetProjection.Of(place.Camera, Wide).PositionOf(place.Point);
        var both = SheetProjection.Of(
            place.Camera.TiltedTo(Angle.FromDegrees(tilt)), Wide, null, SheetAim.FromAngles(Angle.Zero, Angle.FromDegrees(tilt))).PositionOf(place.Point);
        if (level is { } a && both is { } b)
        {
            Assert.Equal(a.X, b.X, 1e-9);
            Assert.Equal(a.Y, b.Y, 1e-9);
        }
    });

    [Fact]
    public void Beyond_the_photograph_is_unknown()
    {
        var narrow = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(30));
        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), narrow);
        Assert.NotNull(projection.PositionOf(At(16, 0))); // atan(16/60) = 14.9°
        Assert.Null(projection.PositionOf(At(16.2, 0))); // 15.1°
        Assert.Null(SheetProjection.Of(Flat(0.35, 60, 100, 80), narrow, null, SheetAim.FromAngles(Angle.FromDegrees(180))).PositionOf(SheetPoint.Middle));
    }

    // A level box turned a quarter to the left: its right side is up, and the picture stands.
    [Fact]
    public void A_camera_on_its_side()
    {
        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide, SheetFormat.Upright);
        Assert.Equal(80, projection.PictureSize.Width.Millimetres, 1e-9);
        Assert.Equal(100, projection.PictureSize.Height.Millimetres, 1e-9);
        Assert.Equal(At(-20, 30), projection.PicturePointAt(At(30, 20)));
        Assert.Equal(At(30, 20), projection.SheetPointAt(At(-20, 30)));
        var position = projection.PositionOf(At(30, 20));
        Assert.Equal(0.5 - (1.0 / 3 * 1000 / 2000), position!.Value.X, 1e-12);
        Assert.Equal(0.5 - (0.5 * 1000 / 1500), position.Value.Y, 1e-12);
    }

    [Theory]
    [InlineData(100, 80, SheetFormat.Level)]
    [InlineData(80, 100, SheetFormat.Upright)]
    public void Unless_told_the_sheet_lies_as_it_does_in_the_camera(double width, double height, SheetFormat format)
    {
        var projection = SheetProjection.Of(Flat(0.35, 60, width, height), Wide);
        Assert.Equal(format, projection.Format);
        Assert.Equal(width, projection.PictureSize.Width.Millimetres, 1e-9);
    }

    // 1000 pixels to 60 mm.
    [Fact]
    public void Pixels_of_the_photograph_to_a_millimetre()
        => Assert.Equal(1000 / 60.0, SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide).PhotographPixelsPerMillimetre(), 1e-6);

    [Fact]
    public void Absurd_aims_and_grids_are_refused()
    {
        Assert.Throws<RefusalException>(() => SheetAim.FromAngles(Angle.FromDegrees(181)));
        Assert.Throws<RefusalException>(() => SheetAim.FromAngles(Angle.Zero, Angle.FromDegrees(-91)));
        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide);
        Assert.Throws<RefusalException>(() => SheetGrid.WithLongSide(projection, 12_001));
        Assert.Throws<RefusalException>(() => SheetGrid.WithLongSide(projection, 0));
    }

    [Fact]
    public void Pixels_cover_the_picture()
    {
        var grid = SheetGrid.WithLongSide(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide), 500);
        Assert.Equal((500, 400), (grid.Width, grid.Height));
        Assert.Equal(0.2, grid.PitchMillimetres, 1e-12);
        Assert.Equal(-49.9, grid.XMillimetres(0), 1e-9);
        Assert.Equal(39.9, grid.YMillimetres(0), 1e-9);
        Assert.Equal(0, grid.XMillimetres(249.5), 1e-9);
    }
}
