using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

/// <summary>The border between cameras that can be built and such that cannot, and what a camera keeps when it is changed.</summary>
public sealed class PossibleCamerasTests
{
    // f/8 is the widest: 7.5 mm at 60 mm.
    [Theory]
    [InlineData(7.5, 0, 0, true)]
    [InlineData(7.51, 0, 0, false)]
    [InlineData(0.3, 100, 80, true)] // a hole at the distance of a whole sheet from its middle
    [InlineData(0.3, 100.1, 0, false)]
    [InlineData(0.3, -100.1, 0, false)]
    [InlineData(0.3, 0, 80.1, false)]
    public void Flat_boxes(double hole, double footX, double footY, bool possible)
        => Allowed(possible, () => Flat(hole, 60, 100, 80, footX: footX, footY: footY));

    // Paper around a hole 30 mm from it in a wall of 50 mm: the plane of the hole cuts the wall at acos(1 − 30/50) = 1.1593 rad, 57.96 mm to either side. A thousandth is left free, and
    // a hole 5 mm aside takes 5 mm from either side.
    [Theory]
    [InlineData(30, 115.7, 0, true)]
    [InlineData(30, 115.9, 0, false)]
    [InlineData(30, 105.7, 5, true)]
    [InlineData(30, 105.9, 5, false)]
    [InlineData(30, 105.9, -5, false)]
    [InlineData(100, 313.8, 0, true)] // the wall opposite: once about, 2π·50
    [InlineData(100, 313.9, 0, false)]
    [InlineData(100.01, 60, 0, false)]
    public void Round_tins(double focal, double width, double footX, bool possible)
        => Allowed(possible, () => Curved(0.3, focal, 50, width, 60, footX: footX));

    [Fact]
    public void Light_sees_every_point_of_a_possible_tin() => Gen.Select(Gen.Double[0.3, 1.99], Gen.Double[0.5, 1]).Sample((ratio, share) =>
    {
        var widest = 2 * 50 * Math.Acos(1 - ratio) * 0.9989 * share;
        var camera = Curved(0.3, 50 * ratio, 50, widest, 30, edge: 0);
        Assert.True(camera.FalloffStops(At(widest / 2, 10)).Value > -60);
        Assert.True(camera.DirectionOf(At(widest / 2, 10)).Z > 0);
    });

    // Beside its own sheet, behind the plane of the hole, there is no light: 60 stops less.
    [Fact]
    public void Behind_the_hole_there_is_no_light()
    {
        var tin = Curved(0.3, 50, 50, 150, 60);
        Assert.Equal(-60, tin.FalloffStops(At(90, 0)).Value, 1e-9);
        Assert.Equal(0, tin.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), At(90, 0)).Lux);
    }

    // Radiometry in three dimensions, with vectors: E = L·A·cos θ·cos θ'/r² (any textbook), the paper's normal pointing to the axis of the tin.
    [Fact]
    public void Light_in_a_tin_by_vectors() => AnyPoint.Where(place => place.Camera.Shape.WallRadius is not null).Sample((camera, point) =>
    {
        var (f, wall) = (camera.FocalDistance.Millimetres, camera.Shape.WallRadius!.Value.Millimetres);
        var angle = (point.XMillimetres - camera.HoleOffset.XMillimetres) / wall;
        var (x, y, z) = (wall * Math.Sin(angle), point.YMillimetres - camera.HoleOffset.YMillimetres, f - wall + (wall * Math.Cos(angle)));
        var r = Math.Sqrt((x * x) + (y * y) + (z * z));
        var (atHole, atPaper) = (z / r, ((x * Math.Sin(angle)) + (z * Math.Cos(angle))) / r);
        var open = camera.Hole.OpenPart(Math.Sqrt((x * x) + (y * y)) / z);
        var expected = 1000 * camera.Hole.AreaSquareMillimetres * atHole * atPaper / (r * r) * open;
        Assert.Equal(expected, camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), point).Lux, 1e-9 * expected);
    });

    // A hole aside sees more to one side: from −50 − 12 to 50 − 12 mm at 60 mm, and from −40 + 9 to 40 + 9.
    [Fact]
    public void The_field_of_a_shifted_hole()
    {
        var field = Flat(0.3, 60, 100, 80, footX: 12, footY: -9).Field();
        static double Deg(double x) => Math.Atan(x / 60) * 180 / Math.PI;
        Assert.Equal(Deg(62) + Deg(38), field.Horizontal.Degrees, 1e-9);
        Assert.Equal(Deg(49) + Deg(31), field.Vertical.Degrees, 1e-9);

        // The wider of the two diagonals, by the law of cosines.
        static double Between((double X, double Y) a, (double X, double Y) b)
            => Math.Acos(((a.X * b.X) + (a.Y * b.Y) + 3600) / Math.Sqrt(((a.X * a.X) + (a.Y * a.Y) + 3600) * ((b.X * b.X) + (b.Y * b.Y) + 3600))) * 180 / Math.PI;
        Assert.Equal(Math.Max(Between((38, 49), (-62, -31)), Between((-62, 49), (38, -31))), field.Diagonal.Degrees, 1e-9);
    }

    [Fact]
    public void A_changed_camera_is_the_same_otherwise() => Gen.Select(AnyCamera, Gen.Double[0, 0.5], Gen.Double[-80, 80]).Sample((camera, spread, tilt) =>
    {
        var known = camera.WithFocalDistanceSpread(spread);
        Assert.Equal(0, camera.FocalDistanceRelativeSd);
        var changed = known.TiltedTo(Angle.FromDegrees(tilt)).WithHole(Hole.FromDiameter(Mm(0.2), 0.01));
        Assert.Equal(
            (camera.Name, camera.FocalDistance, camera.Sheet, camera.Shape, camera.HoleOffset, spread, 0.2),
            (changed.Name, changed.FocalDistance, changed.Sheet, changed.Shape, changed.HoleOffset, changed.FocalDistanceRelativeSd, Math.Round(changed.Hole.Diameter.Millimetres, 9)));
        Assert.Equal(tilt, changed.Tilt.Degrees, 1e-9);
        Assert.Equal(camera.DirectionOf(At(3, 4)), changed.DirectionOf(At(3, 4)));
    });

    [Fact]
    public void Names_are_trimmed_and_never_empty()
    {
        string Named(string name) => PinholeCamera.Create(name, Hole.FromDiameter(Mm(0.3)), Mm(60), SheetSize.FromMillimetres(100, 80)).Name;
        Assert.Equal("unnamed camera", Named("  "));
        Assert.Equal("tin of tea", Named(" tin of tea "));
    }

    // π/4·d²: of 2 mm it is π.
    [Fact]
    public void The_area_of_a_hole() => Assert.Equal(Math.PI, Hole.FromDiameter(Mm(2)).AreaSquareMillimetres, 1e-12);

    [Fact]
    public void Sizes_and_places_in_words()
    {
        Assert.Equal("101.6 × 127 mm", SheetSize.FromMillimetres(101.6, 127).ToString());
        Assert.Equal("-2.5, 3 mm", At(-2.5, 3).ToString());
        Assert.Equal(SheetPoint.Middle, At(0, 0));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Action[] absurd =
        [
            () => Hole.FromDiameter(Mm(0.01)), () => Hole.FromDiameter(Mm(51)), () => Hole.FromDiameter(Mm(0.3), -0.1), () => BoxA.WithFocalDistanceSpread(0.51), () => BoxA.WithFocalDistanceSpread(-0.1),
            () => SheetSize.FromMillimetres(100, 1), () => SheetSize.FromMillimetres(1, 100), () => At(0, 50_001), () => At(50_001, 0), () => PaperShape.Curved(Mm(4)), () => PaperShape.Curved(Mm(20_001)),
            () => Flat(0.3, 20_001, 100, 80), () => BoxA.TiltedTo(Angle.FromDegrees(-91)),
        ];
        Assert.All(absurd, act => Assert.Throws<RefusalException>(act));
    }

    private static void Allowed(bool possible, Func<PinholeCamera> create)
    {
        if (possible)
        {
            Assert.True(create().FNumber.Value >= 8);
        }
        else
        {
            Assert.Throws<RefusalException>(create);
        }
    }
}
