using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class RegionShapeTests
{
    // Mechanics of a rectangle w × h (any handbook): second moments w²/12 and h²/12, and the ellipse of the same moments has the half axes w/√3 and h/√3.
    [Fact]
    public void A_rectangle_has_the_moments_of_a_rectangle() => Gen.Select(Gen.Int[3, 20], Gen.Int[3, 20], Gen.Int[1, 15], Gen.Int[1, 15], Gen.Bool).Sample((width, height, left, top, bright) =>
    {
        var found = Shape(50, 50, (x, y) => x >= left && x < left + width && y >= top && y < top + height, bright)!.Value;
        Assert.Equal(left + (width / 2.0), found.X, 1e-9);
        Assert.Equal(top + (height / 2.0), found.Y, 1e-9);
        Assert.Equal(width * height, found.Area, 1e-9);
        Assert.Equal(Math.Max(width, height) / Math.Sqrt(3), found.LongAxis, 1e-9);
        Assert.Equal(Math.Min(width, height) / Math.Sqrt(3), found.ShortAxis, 1e-9);
        if (width != height)
        {
            Assert.Equal(width > height ? 0 : Math.PI / 2, Math.Abs(found.Direction), 1e-9);
        }

        Assert.Equal(bright, found.IsBright);
        Assert.False(found.TouchesBorder);
    });

    // 480 × 360 pixels are looked at every other pixel, and the figures are in pixels all the same.
    [Fact]
    public void A_large_region_is_looked_at_in_steps()
    {
        var found = Shape(600, 500, (x, y) => x is >= 40 and < 520 && y is >= 60 and < 420, true, new ConnectedCells(40, 60, 519, 419, 1))!.Value;
        Assert.Equal((280, 240), (found.X, found.Y));
        Assert.Equal(480 * 360, found.Area);
        Assert.Equal(480 / Math.Sqrt(3), found.LongAxis, 1e-2);
        Assert.Equal(360 / Math.Sqrt(3), found.ShortAxis, 1e-2);
        Assert.False(found.TouchesBorder);
    }

    // A band along y = x, downwards to the right, and its mirror image.
    [Theory]
    [InlineData(1, Math.PI / 4)]
    [InlineData(-1, -Math.PI / 4)]
    public void Direction_is_counted_downwards_from_the_right(int sign, double direction)
    {
        var found = Shape(40, 40, (x, y) => Math.Abs(x - 20 - (sign * (y - 20))) <= 2 && Math.Abs(x - 20) + Math.Abs(y - 20) <= 24, true)!.Value;
        Assert.Equal(direction, found.Direction, 1e-9);
        Assert.True(found.LongAxis > 3 * found.ShortAxis);
    }

    [Theory]
    [InlineData(0, 10, true)]
    [InlineData(10, 0, true)]
    [InlineData(34, 10, true)]
    [InlineData(10, 24, true)]
    [InlineData(1, 1, false)]
    [InlineData(33, 23, false)]
    public void What_reaches_the_border_is_said_to(int left, int top, bool touches)
        => Assert.Equal(touches, Shape(40, 30, (x, y) => x >= left && x < left + 6 && y >= top && y < top + 6, true)!.Value.TouchesBorder);

    [Fact]
    public void Of_two_regions_it_is_the_larger() => Gen.Select(Gen.Int[2, 9], Gen.Int[2, 9]).Sample((first, second) =>
    {
        var found = Shape(40, 40, (x, y) => (x is >= 3 && x < 3 + first && y is >= 3 && y < 3 + first) || (x is >= 20 && x < 20 + second && y is >= 20 && y < 20 + second), true)!.Value;
        Assert.Equal(Math.Pow(Math.Max(first, second), 2), found.Area);
        Assert.Equal(first >= second, found.X < 16);
    });

    // Only a little around the bounds is looked at: two pixels.
    [Fact]
    public void What_is_elsewhere_in_the_scan_does_not_count()
    {
        static bool Two(int x, int y) => (x is >= 20 and < 26 && y is >= 20 and < 26) || x is >= 30 or < 16 || y is >= 30 or < 16;
        Assert.Equal(36, Shape(50, 50, Two, true, new ConnectedCells(20, 20, 25, 25, 36))!.Value.Area);
        Assert.Null(Shape(50, 50, (x, y) => x > 40, true, new ConnectedCells(20, 20, 25, 25, 36)));
    }

    // Codes at the threshold are on neither side.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void At_the_threshold_nothing_stands_out(bool bright)
        => Assert.Null(RegionShape.Of(ScanImage.FromGrey(10, 10, Enumerable.Repeat((byte)100, 100).ToArray()), new ConnectedCells(0, 0, 9, 9, 100), 100, bright));

    private static HoleCandidate? Shape(int width, int height, Func<int, int, bool> inside, bool bright, ConnectedCells? bounds = null)
    {
        var codes = new byte[width * height];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = (byte)(inside(i % width, i / width) == bright ? 180 : 20);
        }

        return RegionShape.Of(ScanImage.FromGrey(width, height, codes), bounds ?? new ConnectedCells(0, 0, width - 1, height - 1, width * height), 100, bright);
    }
}
