using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Scan;

public class PrintCornersTests
{
    private static readonly PrintCorners Level = new(PixelPoint.At(10, 20), PixelPoint.At(310, 20), PixelPoint.At(310, 220), PixelPoint.At(10, 220));

    [Fact]
    public void After_a_quarter_the_side_that_lies_to_the_left_is_called_the_top()
    {
        var turned = Level.Turned(1);
        Assert.Equal(new PrintCorners(Level.BottomLeft, Level.TopLeft, Level.TopRight, Level.BottomRight), turned);
    }

    [Fact]
    public void Quarters_add_up_and_four_are_none() => Gen.Select(Gen.Int[-9, 9], Gen.Int[-9, 9]).Sample((a, b) =>
    {
        Assert.Equal(Level.Turned(a + b), Level.Turned(a).Turned(b));
        Assert.Equal(Level, Level.Turned(4 * a));
    });

    [Fact]
    public void A_quarter_makes_the_shape_the_inverse_and_keeps_the_long_side() => Gen.Int[-5, 5].Sample(quarters =>
    {
        var turned = Level.Turned(quarters);
        Assert.Equal(quarters % 2 == 0 ? 1.5 : 1 / 1.5, turned.WidthOverHeight, 1e-12);
        Assert.Equal(300, turned.LongSidePixels, 1e-9);
    });

    // A sheet seen aslant, its slanting sides the long ones of 3-4-5 triangles.
    [Fact]
    public void The_longest_side_counts_and_opposite_sides_are_averaged()
    {
        // Top 90, bottom 150, left hypot(30, 40) = 50, right the same.
        var aslant = new PrintCorners(PixelPoint.At(130, 100), PixelPoint.At(220, 100), PixelPoint.At(250, 140), PixelPoint.At(100, 140));
        for (var quarters = 0; quarters < 4; quarters++)
        {
            Assert.Equal(150, aslant.Turned(quarters).LongSidePixels, 1e-9);
            Assert.Equal(quarters % 2 == 0 ? 240.0 / 100 : 100.0 / 240, aslant.Turned(quarters).WidthOverHeight, 1e-9);
        }
    }

    [Fact]
    public void The_map_brings_the_corners_of_the_unit_square_to_them()
    {
        var map = Level.ToMap();
        Assert.Equal((10.0, 20.0), (Math.Round(map.Map(0, 0).X, 9), Math.Round(map.Map(0, 0).Y, 9)));
        Assert.Equal((160.0, 220.0), (Math.Round(map.Map(0.5, 1).X, 9), Math.Round(map.Map(0.5, 1).Y, 9)));
    }
}
