using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using MathNet.Numerics;
using MathNet.Numerics.Integration;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class PointSpreadTests
{
    private static readonly PaperLight Noon = PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);

    private static readonly Gen<PointSpread> AnySpread = Gen.Select(Gen.Double[0.15, 0.8], Gen.Double[30, 200], Gen.Double[400, 600])
        .Select((hole, distance, nanometres) => PointSpread.Of(Mm(hole), Mm(distance), PaperLight.Monochromatic(nanometres)));

    [Fact]
    public void Energy_grows_with_the_circle_and_ends_at_one() => Gen.Select(AnySpread, Gen.Double[0.01, 3], Gen.Double[1, 2]).Sample((spread, radius, more) =>
    {
        Assert.True(spread.EnergyWithin(Mm(radius * more)) >= spread.EnergyWithin(Mm(radius)) - 1e-9);
        Assert.InRange(spread.EnergyWithin(Mm(10_000)), 0.9999, 1);
    }, iter: Samples.Of(50));

    // What the density adds up to ring by ring is what the energy says; two thousand midpoints are good to better than 1e-4.
    [Fact]
    public void Density_and_energy_agree()
    {
        var spread = PointSpread.Of(Mm(0.35), Mm(63), Noon);
        var (radius, sum) = (0.6, 0.0);
        const int Rings = 2000;
        for (var i = 0; i < Rings; i++)
        {
            var r = (i + 0.5) * radius / Rings;
            sum += spread.DensityAt(r) * 2 * Math.PI * r * radius / Rings;
        }

        Assert.Equal(spread.EnergyWithin(Mm(radius)), sum, 1e-4);
    }

    [Fact]
    public void The_diameter_that_holds_a_part_holds_that_part() => Gen.Select(AnySpread, Gen.Double[0.1, 0.99]).Sample((spread, part) =>
        Assert.Equal(part, spread.EnergyWithin(Mm(spread.DiameterHolding(part).Millimetres / 2)), 1e-5), iter: Samples.Of(50));

    // Two roads to the contrast: the overlap of the opening with itself, and the Hankel transform of the spot. The spot ends at the computed radius, where
    // a hundredth of the energy is missing; that bounds the difference.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4.5)]
    public void Contrast_is_the_transform_of_the_spot(double linePairs)
    {
        var spread = PointSpread.Of(Mm(0.35), Mm(63), Noon);
        var end = spread.ComputedRadius.Millimetres;
        var rule = new GaussLegendreRule(0, end, 400);
        var transform = 0.0;
        var (places, weights) = (rule.Abscissas, rule.Weights);
        for (var i = 0; i < places.Length; i++)
        {
            transform += weights[i] * 2 * Math.PI * places[i] * spread.DensityAt(places[i]) * SpecialFunctions.BesselJ(0, 2 * Math.PI * linePairs * places[i]);
        }

        Assert.Equal(spread.ContrastAt(linePairs), transform, 0.004);
    }

    // A large hole casts its shadow: a circle as wide as the hole (twice as wide for a subject as near as the paper), half the energy within 1/√2 of it.
    [Theory]
    [InlineData(2, null, 2)]
    [InlineData(2, 63.0, 4)]
    [InlineData(6, null, 6)]
    public void A_large_hole_leaves_its_shadow(double hole, double? subject, double shadow)
    {
        var spread = PointSpread.Of(Mm(hole), Mm(63), Noon, subject is { } s ? Mm(s) : null);
        Assert.Equal(shadow * Math.Sqrt(0.5), spread.DiameterHolding(0.5).Millimetres, 0.02 * shadow);
        Assert.True(spread.EnergyWithin(Mm(0.55 * shadow)) > 0.97);

        // An even disc loses all contrast at 1.22 lines to its width, and shows them reversed beyond.
        Assert.True(Math.Abs(spread.ContrastAt(1.22 / shadow)) < 0.02);
        Assert.True(spread.ContrastAt(1.6 / shadow) < -0.1);
    }

    // Between the exact integral and the shadow nothing jumps: 150 zones of 449 nm at 63 mm are a hole of 4.12 mm.
    [Fact]
    public void From_waves_to_shadow_without_a_jump()
        => Assert.Equal(
            PointSpread.Of(Mm(4.1), Mm(63), Noon).DiameterHolding(0.8).Millimetres / 4.1,
            PointSpread.Of(Mm(4.2), Mm(63), Noon).DiameterHolding(0.8).Millimetres / 4.2,
            0.002);

    [Fact]
    public void The_best_hole_grows_with_the_root_of_distance_and_wavelength() => Gen.Select(Gen.Double[30, 300], Gen.Double[400, 600]).Sample((distance, nanometres) =>
    {
        var one = BestDiameter.Compute(Mm(distance), PaperLight.Monochromatic(nanometres), SharpnessCriterion.Usual);
        var four = BestDiameter.Compute(Mm(4 * distance), PaperLight.Monochromatic(nanometres), SharpnessCriterion.Usual);
        Assert.Equal(2, four.Millimetres / one.Millimetres, 0.002);
    }, iter: Samples.Of(20));

    [Fact]
    public void No_other_hole_does_better()
    {
        foreach (var criterion in new[] { SharpnessCriterion.Usual, SharpnessCriterion.FinestLines(0.5), SharpnessCriterion.SmallestSpot(0.8) })
        {
            var best = BestDiameter.Compute(Mm(63), Noon, criterion);
            var score = criterion.Score(best, Mm(63), Noon, null);
            for (var factor = 0.6; factor < 1.7; factor += 0.05)
            {
                Assert.True(criterion.Score(Mm(best.Millimetres * factor), Mm(63), Noon, null) <= score + (1e-4 * Math.Abs(score)));
            }
        }
    }

    [Fact]
    public void The_frequency_of_a_contrast_has_that_contrast() => Gen.Select(AnySpread, Gen.Double[0.05, 0.9]).Sample((spread, contrast) =>
        Assert.Equal(contrast, spread.ContrastAt(spread.LinePairsPerMillimetreAt(contrast)), 1e-4), iter: Samples.Of(50));

    [Fact]
    public void A_sunlit_paper_sees_between_its_limits()
    {
        Assert.InRange(Noon.MeanNanometres, 430, 470);
        Assert.True(PaperLight.Of(LightColour.OpenShade.ToSpectrum(), PaperSensitivity.BlueSensitive).MeanNanometres < Noon.MeanNanometres);
    }

    [Fact]
    public void Absurd_holes_are_refused()
    {
        Assert.Throws<RefusalException>(() => PointSpread.Of(Mm(0), Mm(63), Noon));
        Assert.Throws<RefusalException>(() => PointSpread.Of(Mm(10), Mm(5), Noon));
        Assert.Throws<RefusalException>(() => PointSpread.Of(Mm(0.3), Mm(63), Noon, Mm(0)));
        Assert.Throws<RefusalException>(() => PaperLight.Monochromatic(double.NaN));
        Assert.Throws<RefusalException>(() => SharpnessCriterion.FinestLines(0));
        Assert.Throws<RefusalException>(() => BestDiameter.Classical(-1, Mm(63), 550));
    }
}
