using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Scan;

public class UnevenLightTests
{
    private static readonly PatchArea Edge = new(0.1, 0.2, 0.9, 0.8);

    // Light along the edge is exp of a parabola; what comes back is that over its value in the middle.
    [Fact]
    public void Light_that_falls_off_smoothly_comes_back() => Gen.Select(Gen.Double[-0.6, 0.6], Gen.Double[-1.5, 1.5], Gen.Double[0.3, 0.6], Gen.Double[0, 1]).Sample((slope, bend, middle, u) =>
    {
        double Over(double place) => Math.Exp((slope * (place - 0.5)) + (bend * (place - 0.5) * (place - 0.5)));
        // With a code's noise, as scans have: of codes without it, light that changes by less than one tells nothing.
        var scan = ScanPictures.Draw(600, 40, (column, row) => (middle * Over((column + 0.5) / 600)) + (((((column * 7) + (row * 3)) % 20) - 9.5) / 20 / 255));
        var even = UnevenLight.Along(scan, ScanPictures.Whole(scan).ToMap(), Edge);
        Assert.Equal(Over(u), even.At(u), 0.015 * Over(u));
        Assert.Equal(1, even.At(0.5), 1e-12);
    }, iter: Samples.Of(40));

    // Every piece looks at its own part only, and dust of a tenth in each counts for nothing.
    [Fact]
    public void Dust_along_the_edge_does_not_bend_it()
    {
        var scan = ScanPictures.Draw(600, 40, (column, row) => (column + row) % 10 == 0 ? 0.02 : 0.5 + (0.2 * column / 600));
        var even = UnevenLight.Along(scan, ScanPictures.Whole(scan).ToMap(), Edge);
        Assert.Equal(0.66 / 0.6, even.At(0.8), 0.01);
        Assert.Equal(0.54 / 0.6, even.At(0.2), 0.01);
    }

    [Fact]
    public void A_black_edge_is_still_a_number()
    {
        var scan = ScanPictures.Draw(60, 40, (_, _) => 0);
        Assert.Equal(1, UnevenLight.Along(scan, ScanPictures.Whole(scan).ToMap(), Edge).At(0.9), 1e-9);
        Assert.Equal(1, UnevenLight.None.At(0.9));
    }
}
