using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class PinholeCameraTests
{
    private static readonly Luminance Bright = Luminance.FromCandelasPerSquareMetre(3200);

    [Fact]
    public void Every_point_of_the_sheet_is_found_again_from_where_it_looks() => AnyPoint.Sample((camera, point) =>
    {
        var found = camera.PointOf(camera.DirectionOf(At(point.XMillimetres * 0.999, point.YMillimetres * 0.999)));
        Assert.NotNull(found);
        Assert.Equal(point.XMillimetres * 0.999, found.Value.XMillimetres, 1e-7);
        Assert.Equal(point.YMillimetres * 0.999, found.Value.YMillimetres, 1e-7);
    });

    [Fact]
    public void Light_doubles_with_luminance_and_quadruples_with_twice_the_hole() => AnyPoint.Sample((camera, point) =>
    {
        var thin = camera.WithHole(Hole.FromDiameter(camera.Hole.Diameter, edgeThickness: Length.FromMillimetres(0)));
        var wide = camera.WithHole(Hole.FromDiameter(Mm(2 * camera.Hole.Diameter.Millimetres), edgeThickness: Length.FromMillimetres(0)));
        var light = thin.ImageIlluminance(Bright, point).Lux;
        Assert.Equal(2 * light, thin.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(6400), point).Lux, light * 1e-9);
        Assert.Equal(4 * light, wide.ImageIlluminance(Bright, point).Lux, light * 1e-9);
    });

    [Fact]
    public void A_thick_edge_only_takes_light() => AnyPoint.Sample((camera, point) =>
    {
        var thin = camera.WithHole(Hole.FromDiameter(camera.Hole.Diameter, edgeThickness: Length.FromMillimetres(0)));
        Assert.True(camera.ImageIlluminance(Bright, point) <= thin.ImageIlluminance(Bright, point));
    });

    [Fact]
    public void Falloff_is_the_light_here_over_the_light_on_the_axis() => AnyPoint.Sample((camera, point) =>
    {
        var onAxis = camera.ImageIlluminance(Bright, camera.HoleOffset).Lux;
        var here = camera.ImageIlluminance(Bright, point).Lux;
        Assert.Equal(here, onAxis * camera.FalloffStops(point).Ratio, onAxis * 1e-9);
    });

    // A hole raised in the front of the box: the image, upside down on the paper, moves up with it, and the picture shows more sky.
    [Fact]
    public void A_raised_hole_sees_more_sky()
    {
        var camera = Flat(0.35, 60, 100, 80, footY: -10);
        Assert.Equal(40.0, camera.DirectionOf(At(0, 40)).Elevation.Degrees, 0.2); // atan(50/60) = 39.8
        Assert.Equal(-26.6, camera.DirectionOf(At(0, -40)).Elevation.Degrees, 0.05); // atan(30/60)
        Assert.True(camera.DirectionOf(At(10, 0)).X > 0);
    }

    [Fact]
    public void Beside_the_sheet_is_not_on_it()
    {
        var box = Flat(0.35, 60, 100, 80);
        Assert.NotNull(box.PointOf(CameraDirection.FromVector(49, 39, 60)));
        Assert.Null(box.PointOf(CameraDirection.FromVector(51, 0, 60)));
        Assert.Null(box.PointOf(CameraDirection.FromVector(0, 0, -1)));
        Assert.Null(Curved(0.3, 50, 50, 60, 60).PointOf(CameraDirection.FromVector(1, 0, 0.1)));
    }

    [Theory]
    [InlineData(0, 60, 100, 80, "The hole's diameter is 0 mm; it should be between 0.02 and 50 mm.")]
    [InlineData(12, 60, 100, 80, "The hole of 12 mm is too large for paper 60 mm behind it; it should be 7.5 mm or less.")]
    [InlineData(0.35, 1, 100, 80, "The distance from the hole to the paper is 1 mm; it should be between 3 and 20000 mm.")]
    [InlineData(0.35, 60, 0, 80, "The sheet's width is 0 mm; it should be between 2 and 20000 mm.")]
    [InlineData(0.35, double.NaN, 100, 80, "The length is NaN mm; it should be between 0 and 1000000000000 mm.")]
    public void Impossible_cameras_are_refused_in_a_sentence(double hole, double focal, double width, double height, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(() => Flat(hole, focal, width, height)).Message);

    [Theory]
    [InlineData(101, 50, 60, "Paper on a wall of 50 mm radius cannot be 101 mm from a hole in the wall opposite; the distance should be 100 mm or less.")]
    [InlineData(50, 50, 160, "A sheet 160 mm long along a wall of 50 mm radius would reach beside or behind the hole; it should be 156.9 mm or less.")]
    [InlineData(100, 50, 320, "A sheet 320 mm long along a wall of 50 mm radius would reach beside or behind the hole; it should be 313.8 mm or less.")]
    [InlineData(50, 2, 10, "The radius of the wall the paper lies on is 2 mm; it should be between 5 and 20000 mm.")]
    public void Impossible_tins_are_refused_in_a_sentence(double focal, double wall, double width, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(() => Curved(0.3, focal, wall, width, 60)).Message);

    [Fact]
    public void Other_absurdities_are_refused()
    {
        Assert.Throws<RefusalException>(() => Flat(0.35, 60, 100, 80, edge: 11));
        Assert.Throws<RefusalException>(() => Flat(0.35, 60, 100, 80, footX: 101));
        Assert.Throws<RefusalException>(() => Hole.FromDiameter(Mm(0.3), relativeSd: 0.6));
        Assert.Throws<RefusalException>(() => Hole.FromDiameter(Mm(0.3), relativeSd: double.NaN));
        Assert.Throws<RefusalException>(() => SheetPoint.FromMillimetres(double.NegativeInfinity, 0));
        Assert.Throws<RefusalException>(() => Flat(0.35, 60, 100, 80).TiltedTo(Angle.FromDegrees(91)));
        Assert.Throws<RefusalException>(() => PinholeCamera.Create("box", Hole.FromDiameter(Mm(0.3)), Mm(60), default));
    }

    // 0.05 mm of material and 0.05 spread are what a camera has whose owner said nothing.
    [Fact]
    public void A_hole_of_which_only_the_diameter_is_known()
    {
        var hole = Hole.FromDiameter(Mm(0.35));
        Assert.Equal(0.05, hole.EdgeThickness.Millimetres, 1e-12);
        Assert.Equal(0.05, hole.DiameterRelativeSd);
    }
}
