using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class LogisticCurveTests
{
    // The range and the speed are measured on the curve by ISO 6846's definitions, which know nothing of how the curve was made.
    [Fact]
    public void A_paper_made_of_an_iso_speed_and_range_measures_them_again()
        => Gen.Select(Gen.Double[0.02, 0.4], Gen.Double[1, 2.4], Gen.Double[50, 160], Gen.Double[20, 1000], Gen.Double[0.5, 2]).Sample((min, net, range, speed, asymmetry) =>
        {
            var paper = PhotographicPaper.FromSpeed(
                "box", PaperKind.NegativeWorking, D(min), D(min + net), range, IsoPaperSpeed.FromValue(speed), PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed, asymmetry);
            var measures = IsoPaperMeasures.Of(paper.Curve);
            Assert.Equal(range, measures.Range, 1e-6);
            Assert.Equal(1, measures.Speed!.Value / speed, 1e-9);
        });

    [Fact]
    public void A_positive_made_of_a_mirrored_range_measures_it_again()
        => Gen.Select(Gen.Double[50, 160], Gen.Double[0.5, 2], Gen.Double[0.1, 20]).Sample((range, asymmetry, anchor) =>
        {
            var curve = LogisticCurve.FromRange(PaperKind.DirectPositive, D(0.08), D(1.98), range, D(0.7), H(anchor), asymmetry);
            Assert.Equal(range, IsoPaperMeasures.Of(curve).Range, 1e-6);
            Assert.Equal(0.7, curve.DensityAt(H(anchor)).Value, 1e-9);
        });

    [Theory]
    [InlineData(-300)]
    [InlineData(300)]
    public void Far_beyond_both_ends_the_curve_is_flat(double lgExposure)
    {
        foreach (var curve in new[] { Negative, Positive })
        {
            Assert.Equal(0, curve.SlopeAtLg(lgExposure));
            Assert.Equal((lgExposure > 0) == (curve.Kind == PaperKind.NegativeWorking) ? curve.MaximumDensity.Value : curve.MinimumDensity.Value, curve.DensityAtLg(lgExposure), 1e-12);
        }
    }

    // −lg 0.18 where the paper has it; a soft paper's mid-tone lies within its scale, a grey one's above its white.
    [Theory]
    [InlineData(0.08, 1.98, 0.7447)]
    [InlineData(0.10, 0.90, 0.58)]
    [InlineData(0.70, 2.70, 0.80)]
    public void The_mid_tone_of_an_index_lies_on_the_paper(double min, double max, double density)
        => Assert.Equal(
            density,
            ExposureIndex.Found(3, S(1), LightColour.Noon, MeterConstants.Usual).MidToneDensity(PaperKind.DirectPositive, D(min), D(max)).Value,
            1e-9);
}
