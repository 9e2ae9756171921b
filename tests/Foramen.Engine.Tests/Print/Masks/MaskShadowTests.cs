using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public sealed class MaskShadowTests
{
    private static readonly PinholeCamera Box = Flat(0.4, 60, 100, 80);

    // 100 × 80 pixels of a millimetre.
    private static readonly SheetGrid Grid = SheetGrid.WithLongSide(SheetProjection.Of(Box, PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(100))), 100);

    // Lying on the paper there is no soft edge: a pixel keeps the part that the square leaves free, exactly across, in quarters down.
    [Fact]
    public void On_the_paper_a_pixel_keeps_the_part_that_is_left_free() => Gen.Select(Gen.Double[-30, 30], Gen.Int[-60, 60], Gen.Double[4, 120], Gen.Bool, Gen.Bool).Sample((x, quarterY, width, mirrored, passes) =>
    {
        var height = Math.Round(width / 2) / 2;
        var shape = MaskOutline.SvgPath(FormattableString.Invariant($"M0 0H{width:R}V{height:R}H0Z"));
        var light = Of(shape, width, MaskPlace.InTray(Mm(0)), SheetPoint.FromMillimetres(x, quarterY / 4.0), mirrored, passes ? MaskSense.Passes : MaskSense.Blocks);
        var middle = 50 + (mirrored ? -x : x);
        var (left, right) = (middle - (width / 2), middle + (width / 2));
        var (top, bottom) = (40 - (quarterY / 4.0) - (height / 2), 40 - (quarterY / 4.0) + (height / 2));
        for (var i = 0; i < light.Length; i++)
        {
            var (column, row) = (i % 100, i / 100);
            var across = Math.Clamp(Math.Min(column + 1, right) - Math.Max(column, left), 0, 1);
            var down = Math.Clamp(Math.Min(row + 1, bottom) - Math.Max(row, top), 0, 1);
            Assert.Equal(passes ? across * down : 1 - (across * down), light[i], 0.126);
            if (down is 0 or 1)
            {
                Assert.Equal(passes ? across * down : 1 - (across * down), light[i], 1e-5);
            }
        }
    }, iter: Samples.Of(60));

    // What lies double counts once; what is wound the other way is a hole in it (the nonzero rule, SVG 1.1, 11.3).
    [Fact]
    public void Overlapping_strokes_count_once_and_a_ring_wound_back_is_a_hole()
    {
        var both = MaskOutline.SvgPath("M0 0H40V40H0Z M20 0H60V40H20Z M4 4V8H8V4Z");
        var light = Of(both, 60, MaskPlace.InTray(Mm(0)), default, false, MaskSense.Blocks);
        double At(int x, int y) => light[((20 + y) * 100) + 20 + x];
        Assert.Equal(0, At(30, 20), 1e-5);
        Assert.Equal(0, At(10, 20), 1e-5);
        Assert.Equal(0, At(50, 20), 1e-5);
        Assert.Equal(1, At(5, 6), 1e-5);
        Assert.Equal(1, At(-1, 6), 1e-5);
        Assert.Equal(1, At(60, 20), 1e-5);
    }

    // Across a straight edge the light grows as the part of the hole's disc that is seen past it: (acos u − u √(1 − u²))/π, u in radii.
    [Theory]
    [InlineData(false, 57)]
    [InlineData(false, 55.5)]
    [InlineData(true, 2)]
    public void The_edge_is_as_soft_as_the_hole_seen_past_it(bool beforeHole, double distance)
    {
        var place = beforeHole ? MaskPlace.BeforeHole(Mm(distance)) : MaskPlace.InTray(Mm(distance));
        var light = Of(MaskOutline.SvgPath("M0 0H200V200H0Z"), 200, place, SheetPoint.FromMillimetres(100, 0), false, MaskSense.Passes);

        // Similar triangles: the hole's 0.4 mm at the edge's distance from it, drawn on the paper behind the edge.
        var radius = 0.5 * 0.4 * (beforeHole ? (60 + distance) / distance : distance / (60 - distance));
        for (var row = 0; row < 80; row += 13)
        {
            for (var column = 0; column < 100; column++)
            {
                var u = Math.Clamp((50 - (column + 0.5)) / radius, -1, 1);
                Assert.Equal((Math.Acos(u) - (u * Math.Sqrt(1 - (u * u)))) / Math.PI, light[(row * 100) + column], 0.02);
            }
        }
    }

    // The same edge lying level: rows are averaged as columns are.
    [Fact]
    public void The_edge_is_as_soft_downwards_as_across()
    {
        PrintMask Half(SheetPoint middle) => PrintMask.Create(MaskOutline.SvgPath("M0 0H300V300H0Z"), Mm(300), MaskPlace.InTray(Mm(56)), MaskSense.Blocks, middle);
        var across = MaskShadow.Of(Half(SheetPoint.FromMillimetres(150, 0)), Grid, Box, false);
        var down = MaskShadow.Of(Half(SheetPoint.FromMillimetres(0, -150)), Grid, Box, false);
        for (var i = -15; i < 15; i++)
        {
            Assert.Equal(across[(40 * 100) + 50 + i], down[((40 + i) * 100) + 50], 0.01);
        }
    }

    // Of a spot the sums are those of its area, wherever it is; what lies over the whole sheet leaves nothing anywhere, and beyond the rim it goes on.
    [Fact]
    public void A_mask_larger_than_the_sheet_is_as_dark_at_its_rim_as_in_its_middle()
        => Assert.All(Of(MaskOutline.SvgPath("M0 0H10V10H0Z"), 140, MaskPlace.InTray(Mm(56)), default, false, MaskSense.Blocks), light => Assert.Equal(0, light, 1e-5));

    private static float[] Of(MaskOutline shape, double width, MaskPlace place, SheetPoint middle, bool mirrored, MaskSense sense)
        => MaskShadow.Of(PrintMask.Create(shape, Mm(width), place, sense, middle), Grid, Box, mirrored);
}
