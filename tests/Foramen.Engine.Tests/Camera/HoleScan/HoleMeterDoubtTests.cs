using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

/// <summary>How well a hole is known, burrs and notches by name, and when it is not told at all; ten pixels to a millimetre.</summary>
public sealed class HoleMeterDoubtTests
{
    private static readonly ScanScale TenToAMillimetre = ScanScale.FromDotsPerInch(254, 0);

    private static readonly RenderedHole Clear = new() { LongAxis = 20, ShortAxis = 20, Noise = 0, Inside = 0.75, Outside = 0.1, Encoding = ScanEncoding.Linear };

    private static HoleMeasurement Measured(RenderedHole hole) => HoleMeter.Measure(hole.Draw(), TenToAMillimetre);

    // By Cramér and Rao (see the fit) noise s tells an edge of length L, step C and blur σ to s²·2σ√π/(C²·L); the model's own 0.02 pixel adds as a square. Without noise nothing but half
    // a code is left of the first.
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(0.2)]
    public void The_spread_is_that_of_noise_and_model(double noise)
    {
        var edge = noise * noise * 2 * Math.Sqrt(1 + (1 / 12.0)) * Math.Sqrt(Math.PI) / (0.65 * 0.65 * 2 * Math.PI * 20);
        var spread = Measured(Clear with { Noise = noise }).DiameterSd.Millimetres;
        Assert.InRange(spread, 0.2 * Math.Sqrt((0.02 * 0.02) + (0.7 * edge)), 0.2 * Math.Sqrt((0.02 * 0.02) + (1.9 * edge) + 1e-5));
    }

    // A needle of 3 × 7 pixels is 21 pixels of area over sectors of 4 by 31: it reaches in by some 5 in one, or half of that in two. As large an error of one sector is 5/31 or 3.5/31 of the mean
    // radius.
    [Fact]
    public void A_burr_is_no_notch_and_is_doubted()
    {
        var measured = Measured(Clear with { Burr = (x, y) => x > 61 && Math.Abs(y - 48) < 1.5 });
        Assert.InRange(measured.Burr.Millimetres, 0.2, 0.6);
        Assert.True(measured.Notch.Millimetres < 0.1);
        Assert.InRange(measured.DiameterSd.Millimetres, 0.2 * 2.5 / 31, 0.2 * 6.0 / 31);
        Assert.InRange(measured.RoundnessDeviation.Millimetres, 0.2, 0.7);
    }

    [Fact]
    public void A_notch_is_no_burr_and_is_doubted()
    {
        var measured = Measured(Clear with { More = (x, y) => x is > 66 and < 75 && Math.Abs(y - 48) < 1.5 });
        Assert.InRange(measured.Notch.Millimetres, 0.2, 0.6);
        Assert.True(measured.Burr.Millimetres < 0.1);
        Assert.InRange(measured.DiameterSd.Millimetres, 0.2 * 2.5 / 31, 0.2 * 6.0 / 31);
    }

    // Twice as light as white can show: where half-way is could be off by a quarter of the blur.
    [Fact]
    public void A_clipped_scan_adds_a_quarter_of_the_blur()
    {
        var measured = Measured(Clear with { Inside = 2 });
        Assert.Contains("clipped to full black or white", Assert.Single(measured.Doubts), StringComparison.Ordinal);
        var own = 0.2 * Math.Sqrt((0.0625 * measured.BlurPixels * measured.BlurPixels) + (0.02 * 0.02));
        Assert.InRange(measured.DiameterSd.Millimetres, own - 1e-6, 1.2 * own);
    }

    // Black and white with nothing between but pixels cut by the edge: all codes are at an end and nothing is hidden.
    [Fact]
    public void A_sharp_scan_in_black_and_white_is_not_doubted()
    {
        var measured = Measured(Clear with { Blur = 0, Inside = 1, Outside = 0 });
        Assert.Empty(measured.Doubts);
        Assert.Equal(4, measured.Diameter.Millimetres, 0.01);
    }

    // Half-way between codes is 0.2 of the light (the transfer curve of sRGB), which a blur of 5 pixels brings 0.8 · 5 pixels outwards, less 5²/48 for the bend
    // of the edge: the hole stands out three and a half pixels wider all around, and is measured by its edge for all that.
    [Fact]
    public void Much_blur_makes_a_hole_look_wider_than_it_is()
    {
        var hole = Clear with { LongAxis = 24, ShortAxis = 24, Blur = 5, Inside = 0.95, Outside = 0.002, Encoding = ScanEncoding.Srgb };
        Assert.InRange(HoleFinder.Find(hole.Draw()).Hole.Diameter / 2, 27.1, 28);
        Assert.Equal(4.8, Measured(hole).Diameter.Millimetres, 0.03);
    }

    // For the same reason a hole of 7.5 pixels stands out as one of nine, and is refused for what it is.
    [Fact]
    public void Too_small_a_hole_says_how_small_its_edge_is()
    {
        var hole = Clear with { LongAxis = 3.75, ShortAxis = 3.75, Blur = 0.8, Inside = 0.95, Outside = 0.002, Encoding = ScanEncoding.Srgb };
        Assert.InRange(HoleFinder.Find(hole.Draw()).Hole.Diameter, 8, 10);
        Assert.Matches("largest spot in the scan is 7\\.[45] pixels across", Assert.Throws<RefusalException>(() => Measured(hole)).Message);
    }

    // By hand: 0.02 of 0.4 is a twentieth, 0.3 by 0.4 are three quarters.
    [Fact]
    public void Ratios_are_those_of_the_widths()
    {
        var measurement = new HoleMeasurement
        {
            Diameter = Length.FromMillimetres(0.4),
            DiameterSd = Length.FromMillimetres(0.02),
            LeastWidth = Length.FromMillimetres(0.3),
            MostWidth = Length.FromMillimetres(0.4),
            RoundnessDeviation = Length.FromMillimetres(0),
            Burr = Length.FromMillimetres(0),
            Notch = Length.FromMillimetres(0),
            Middle = PixelPoint.At(48, 48),
            Outline = [],
            BlurPixels = 1,
            DiameterPixels = 40,
            IsBright = true,
            Doubts = [],
        };
        Assert.Equal(0.05, measurement.RelativeSd, 1e-12);
        Assert.Equal(0.75, measurement.Roundness, 1e-12);
        Assert.Equal((0.05, Hole.AssumedEdgeMillimetres), (Math.Round(measurement.ToHole().DiameterRelativeSd, 12), measurement.ToHole().EdgeThickness.Millimetres));
    }
}
