using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class PhotographicPaperTests
{
    private static readonly Gen<double> GenExponent = Gen.Double[0.6, 1];

    [Fact]
    public void An_index_found_at_some_time_is_not_corrected_again_at_that_time()
        => Gen.Select(Gen.Double[0.5, 20], Gen.Double[1, 600], GenExponent).Sample((index, seconds, exponent) =>
        {
            // What a meter set to this index says must give the mid-tone exactly, at the very time it was found at.
            var failure = SchwarzschildFailure.FromExponent(exponent);
            var speed = ExposureIndex.Found(index, S(seconds), LightColour.Noon, MeterConstants.Usual);
            var paper = Make(speed, failure);
            var luxOnSheet = Math.PI / 4 * 12.5 / index / seconds;
            var exposure = PaperResponse.Of(paper, LightColour.Noon).EffectiveExposure(Illuminance.FromLux(luxOnSheet), 1, S(seconds));
            Assert.Equal(0.7447, paper.Curve.DensityAt(exposure).Value, 1e-6);
            Assert.Equal(0, paper.FailureSpread(S(seconds)).Value, 1e-9);
        });

    [Fact]
    public void Stating_the_index_at_another_time_describes_the_same_paper()
        => Gen.Select(Gen.Double[0.5, 20], Gen.Double[1, 600], Gen.Double[1, 600], GenExponent).Sample((index, at, other, exponent) =>
        {
            var failure = SchwarzschildFailure.FromExponent(exponent);
            var speed = ExposureIndex.Found(index, S(at), LightColour.Overcast, MeterConstants.Usual);
            var a = speed.MidToneExposure(PaperSensitivity.BlueSensitive, failure).LuxSeconds;
            var b = speed.At(S(other), failure).MidToneExposure(PaperSensitivity.BlueSensitive, failure).LuxSeconds;
            Assert.Equal(a, b, a * 1e-9);
        });

    [Fact]
    public void Time_and_exposure_are_each_others_inverse()
        => Gen.Select(Gen.Double[0.001, 10], Gen.Double[0.1, 100], Gen.Double[0.2, 3]).Sample((lux, luxSeconds, ratio) =>
        {
            var response = PaperResponse.Of(Make(ExposureIndex.Found(3, S(120), LightColour.Noon, MeterConstants.Usual), SchwarzschildFailure.Assumed), LightColour.OpenShade);
            var time = response.TimeFor(H(luxSeconds), Illuminance.FromLux(lux), ratio);
            Assert.Equal(luxSeconds, response.EffectiveExposure(Illuminance.FromLux(lux), ratio, time).LuxSeconds, luxSeconds * 1e-9);
        });

    [Fact]
    public void Doubts_grow_with_the_distance_from_where_the_speed_was_found()
    {
        var paper = Make(ExposureIndex.Found(3, S(120), LightColour.Noon, MeterConstants.Usual), SchwarzschildFailure.Assumed);
        Assert.True(paper.FailureSpread(S(600)) > paper.FailureSpread(S(180)));
        Assert.True(paper.ColourSpread(LightColour.LowSun) > paper.ColourSpread(LightColour.Overcast));
        Assert.Equal(0.1, paper.ColourSpread(LightColour.Noon).Value, 1e-9);
    }

    [Fact]
    public void A_positive_has_no_iso_speed()
        => Assert.Throws<RefusalException>(() => Make(IsoPaperSpeed.FromValue(200), SchwarzschildFailure.Assumed));

    [Fact]
    public void No_light_never_exposes()
        => Assert.Throws<RefusalException>(() => PaperResponse.Of(Make(ExposureIndex.Found(3, S(1), LightColour.Noon, MeterConstants.Usual), SchwarzschildFailure.Assumed), LightColour.Noon)
            .TimeFor(H(1), Illuminance.FromLux(0), 1));

    private static PhotographicPaper Make(PaperSpeed speed, FailureLaw failure) => PhotographicPaper.FromSpeed(
        "direct-positive", PaperKind.DirectPositive, D(0.08), D(1.98), 86, speed, PaperSensitivity.BlueSensitive, failure);
}
