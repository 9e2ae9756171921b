using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class LgExposureOfDensityTests
{
    private static readonly Gen<CharacteristicCurve> AnyCurve = Gen.Select(Gen.Bool, Gen.Double[0, 0.3], Gen.Double[0.8, 2], Gen.Double[60, 180], Gen.Double[0.5, 2]).Select(
        (negative, min, net, range, asymmetry) => (CharacteristicCurve)LogisticCurve.FromRange(
            negative ? PaperKind.NegativeWorking : PaperKind.DirectPositive, Density.FromValue(min), Density.FromValue(min + net), range,
            Density.FromValue(min + 0.5), LuminousExposure.FromLuxSeconds(2), asymmetry));

    // ISO 6846: tones are told from 0.04 above the lightest to 0.90 of the net density.
    [Fact]
    public void It_reads_the_curve_backwards_between_the_ends_of_what_the_paper_tells() => Gen.Select(AnyCurve, Gen.Double[0, 1]).Sample((curve, part) =>
    {
        var read = new LgExposureOfDensity(curve);
        var (low, high) = (curve.MinimumDensity.Value + 0.04, curve.MinimumDensity.Value + (0.9 * curve.NetDensity));
        Assert.Equal(low, read.Low, 1e-9);
        Assert.Equal(high, read.High, 1e-9);
        var density = low + (part * (high - low));
        Assert.Equal(density, curve.DensityAtLg(read.At(density)), 1e-4);
        Assert.Equal(density, curve.DensityAtLg(Math.Log10(read.ExposureAt(density))), 1e-4);
    });

    [Fact]
    public void Beyond_the_ends_it_is_held_there() => Gen.Select(AnyCurve, Gen.Double[0.001, 0.5]).Sample((curve, beyond) =>
    {
        var read = new LgExposureOfDensity(curve);
        Assert.Equal(curve.ExposureFor(Density.FromValue(read.Low)).LuxSeconds, read.ExposureAt(read.Low - beyond), 1e-9 * read.ExposureAt(read.Low));
        Assert.Equal(curve.ExposureFor(Density.FromValue(read.High)).LuxSeconds, read.ExposureAt(read.High + beyond), 1e-9 * read.ExposureAt(read.High));
        Assert.Equal(read.At(read.Low), read.At(read.Low - beyond), 1e-12);
        Assert.Equal(read.At(read.High), read.At(read.High + beyond), 1e-12);
    });
}
