using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class CharacteristicCurveTests
{
    private static readonly Gen<CharacteristicCurve> GenCurve =
        from kind in Gen.Enum<PaperKind>()
        from min in Gen.Double[0.02, 0.2]
        from net in Gen.Double[0.8, 2.4]
        from k in Gen.Double[2, 16]
        from x0 in Gen.Double[-2, 3]
        from g in Gen.Double[0.4, 2.5]
        select (CharacteristicCurve)LogisticCurve.Create(kind, D(min), D(min + net), k, x0, g);

    [Fact]
    public void More_light_never_turns_a_curve_back() => Gen.Select(GenCurve, Gen.Double[-4, 6], Gen.Double[0, 2]).Sample((curve, x, more) =>
    {
        var change = curve.DensityAtLg(x + more) - curve.DensityAtLg(x);
        return curve.Kind == PaperKind.NegativeWorking ? change >= 0 : change <= 0;
    });

    [Fact]
    public void Density_and_exposure_are_each_others_inverse() => Gen.Select(GenCurve, Gen.Double[0.01, 0.99]).Sample((curve, share) =>
    {
        var density = D(curve.MinimumDensity.Value + (share * curve.NetDensity));
        Assert.Equal(density.Value, curve.DensityAt(curve.ExposureFor(density)).Value, 1e-9);
    });

    [Fact]
    public void Slope_is_the_derivative() => Gen.Select(GenCurve, Gen.Double[-2, 4]).Sample((curve, x) =>
    {
        const double Small = 1e-5;
        var numeric = (curve.DensityAtLg(x + Small) - curve.DensityAtLg(x - Small)) / (2 * Small);
        Assert.Equal(numeric, curve.SlopeAtLg(x), 1e-5);
    });

    [Fact]
    public void A_paper_twice_as_fast_needs_half_the_exposure() => GenCurve.Sample(curve =>
    {
        var middle = D(curve.MinimumDensity.Value + (0.5 * curve.NetDensity));
        Assert.Equal(
            curve.ExposureFor(middle).LuxSeconds / 2,
            curve.Faster(Stops.FromValue(1)).ExposureFor(middle).LuxSeconds,
            curve.ExposureFor(middle).LuxSeconds * 1e-9);
    });

    [Fact]
    public void A_measured_curve_goes_through_its_patches_and_inverts()
    {
        var patches = Enumerable.Range(-3, 10).Select(i => (H(Math.Pow(10, i * 0.15)), Negative.DensityAt(H(Math.Pow(10, i * 0.15))))).ToList();
        var measured = MeasuredCurve.Through(patches);
        Assert.Equal(PaperKind.NegativeWorking, measured.Kind);
        foreach (var (exposure, density) in patches)
        {
            Assert.Equal(density.Value, measured.DensityAt(exposure).Value, 1e-9);
        }

        Assert.Equal(2.0, measured.ExposureFor(D(0.66)).LuxSeconds, 0.02);
        Assert.Equal(1.0, measured.Faster(Stops.FromValue(1)).ExposureFor(D(0.66)).LuxSeconds, 0.01);
    }

    [Fact]
    public void A_curve_that_turns_back_is_refused_with_the_patch_that_does()
    {
        var patches = new[] { 0.06, 0.1, 0.6, 0.5, 1.2, 1.9 }.Select((d, i) => (H(1 << i), D(d))).ToList();
        var refusal = Assert.Throws<RefusalException>(() => MeasuredCurve.Through(patches));
        Assert.Contains("patch 3", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("patch 4", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN, 0.5)]
    [InlineData(0, 0.5)]
    [InlineData(7, double.PositiveInfinity)]
    [InlineData(7, 99)]
    public void Absurd_parameters_are_refused(double steepness, double middle)
        => Assert.Throws<RefusalException>(() => LogisticCurve.Create(PaperKind.DirectPositive, D(0.08), D(1.98), steepness, middle));

    [Fact]
    public void A_density_beyond_the_paper_is_refused() => Assert.Throws<RefusalException>(() => Negative.ExposureFor(D(2.5)));
}
