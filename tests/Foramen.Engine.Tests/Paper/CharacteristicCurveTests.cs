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
