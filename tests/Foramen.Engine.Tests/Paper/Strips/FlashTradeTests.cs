using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class FlashTradeTests
{
    // With g = 1 the curve is the Hill function of the exposure, D = Dmin + Dn/(1 + (H₀/H)^n), n = k/ln 10; a positive has n below zero.
    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void The_faint_contrast_is_that_of_the_hill_function_between_one_and_four_thresholds(PaperKind kind) => Gen.Double[0, 1.3].Sample(fraction =>
    {
        var curve = kind == PaperKind.NegativeWorking ? Negative : Positive;
        var n = (kind == PaperKind.NegativeWorking ? 1 : -1) * curve.Steepness / Math.Log(10);
        double Share(double exposure) => 1 / (1 + Math.Pow(Math.Pow(10, curve.MidLgExposure) / exposure, n));
        var share = kind == PaperKind.NegativeWorking ? 0.04 / curve.NetDensity : 1 - (0.04 / curve.NetDensity);
        var threshold = Math.Pow(10, curve.MidLgExposure) * Math.Pow((1 / share) - 1, -1 / n);
        double Faint(double flash) => Math.Abs(Share((4 * threshold) + flash) - Share(threshold + flash));
        Assert.Equal(Faint(fraction * threshold) / Faint(0), FlashTrade.Of(curve, fraction).FaintContrast, 1e-9);
    });

    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void The_flash_that_is_advised_changes_the_unexposed_end_by_half_of_what_is_seen(PaperKind kind)
    {
        var curve = kind == PaperKind.NegativeWorking ? Negative : Positive;
        Assert.Equal(0.02, FlashTrade.Of(curve, FlashAdvice.FractionFor(curve)).BaseChange, 1e-9);
    }

    [Fact]
    public void The_flash_that_is_advised_is_its_part_of_the_threshold_that_was_seen() => Gen.Select(Gen.Double[0.2, 3], Gen.Double[0.01, 1]).Sample((luxSeconds, lux) =>
    {
        var paper = PhotographicPaper.FromSpeed(
            "box", PaperKind.NegativeWorking, D(0.06), D(2.06), 110, IsoPaperSpeed.FromValue(500), PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed);
        var response = PaperResponse.Of(paper, LightColour.OpenShade);
        var advice = FlashAdvice.For(response, Illuminance.FromLux(lux), H(luxSeconds));
        var given = response.EffectiveExposure(Illuminance.FromLux(lux), 1, advice.Time).LuxSeconds;
        Assert.Equal(advice.Trade.Effect.Fraction * luxSeconds, given, 1e-9 * given);
    });
}
