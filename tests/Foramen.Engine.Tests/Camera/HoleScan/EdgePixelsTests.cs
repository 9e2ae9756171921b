using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class EdgePixelsTests
{
    [Fact]
    public void The_band_is_all_that_is_near_the_outline() => Gen.Select(Gen.Double[4, 20], Gen.Double[0.7, 1], Gen.Double[-1.5, 1.5], Gen.Double[10, 50], Gen.Double[10, 50]).Sample(
        (axis, ratio, direction, x, y) => AssertIsTheBand(Model(x, y, axis, ratio, direction), 8), iter: Samples.Of(25));

    // Long holes cut by each of the four borders, one that lies over a corner, and one amid the scan.
    [Theory]
    [InlineData(30, 27, 0.4)]
    [InlineData(4, 27, 0)]
    [InlineData(56, 30, 0.8)]
    [InlineData(30, 4, -0.7)]
    [InlineData(30, 51, 1.2)]
    [InlineData(-3, -4, 0.8)]
    [InlineData(64, 58, 0.8)]
    public void A_border_cuts_the_band_and_nothing_else(double x, double y, double direction) => AssertIsTheBand(Model(x, y, 20, 0.62, direction), 8);

    // Twice the blur is a band of 13 pixels to either side.
    [Fact]
    public void A_wider_blur_has_a_wider_band()
    {
        var model = Model(30, 28, 14, 1, 0);
        var move = new double[model.Count];
        move[3] = 1;
        AssertIsTheBand(model.Moved(move), 13);
    }

    // By the definition, over the whole scan: pixels nearer to the outline, along the ray from the middle, than five blurs and three pixels.
    private static void AssertIsTheBand(EdgeModel model, double width)
    {
        var scan = Scan(60, 55);
        var expected = new List<(float, float)>();
        for (var i = 0; i < 60 * 55; i++)
        {
            var (dx, dy) = ((i % 60) + 0.5 - model.X, (i / 60) + 0.5 - model.Y);
            if (Math.Abs(Math.Sqrt((dx * dx) + (dy * dy)) - model.RadiusAt(Math.Atan2(dy, dx))) <= Math.Max(width, model.MeanRadius / 10))
            {
                expected.Add(((i % 60) + 0.5f, (i / 60) + 0.5f));
            }
        }

        var pixels = EdgePixels.About(model, scan);
        Assert.Equal(1, pixels.Stride);
        Assert.Equal(expected, pixels.All.Select(pixel => (pixel.X, pixel.Y)));
        Assert.All(pixels.All, pixel => Assert.Equal(scan.LightAt((int)pixel.X, (int)pixel.Y), pixel.Light));
        Assert.Equal(expected.Count(place => scan.Row((int)place.Item2)[(int)place.Item1] is 0 or 255) / (double)Math.Max(1, expected.Count), pixels.ClippedPart, 1e-12);
    }

    // Half across 400 pixels the band is 40 to either side: 2π·400·80 = 201 000 pixels, of which one in four, and then of those 50 000 none is out of the lattice.
    [Fact]
    public void Of_very_many_pixels_every_few_are_taken()
    {
        var pixels = EdgePixels.About(Model(500, 500, 400, 1, 0), Scan(1000, 1000));
        Assert.Equal(2, pixels.Stride);
        Assert.Equal(2 * Math.PI * 400 * 80 / 4, pixels.All.Length, 300.0);
        Assert.All(pixels.All, pixel => Assert.Equal((pixels.All[0].X % 2, pixels.All[0].Y % 2), (pixel.X % 2, pixel.Y % 2)));
    }

    private static EdgeModel Model(double x, double y, double axis, double ratio, double direction)
        => EdgeModel.From(new HoleCandidate(x, y, Math.PI * axis * axis * ratio, axis, axis * ratio, direction, true, false), 0, 1);

    private static ScanImage Scan(int width, int height)
    {
        var codes = new byte[width * height];
        new Random(1).NextBytes(codes);
        for (var i = 0; i < codes.Length; i += 5)
        {
            codes[i] = (byte)(i % 2 == 0 ? 0 : 255);
        }

        return ScanImage.FromGrey(width, height, codes);
    }
}
