using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using MathNet.Numerics.Distributions;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Exposure.PublishedValues;

/// <summary>
/// The odds against the tabulated normal integral: with one tone and one spread, the probability of landing between two limits is Φ(b/s) − Φ(a/s)
/// (M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, table 26.1), and against a plain simulation for several tones.
/// </summary>
public class ErrorBudgetTests
{
    [Theory]
    [InlineData(0.30)]
    [InlineData(0.55)]
    [InlineData(1.00)]
    [Source("abramowitz-stegun", "table 26.1")]
    public void One_tone_lands_in_its_band_as_the_normal_table_says(double spread)
    {
        var errors = Only(spread);
        var planner = Planner(Positive, [Tone("wall", Rendering.Mid, 3200, 0)], errors: errors);
        var forecast = planner.Recommend();
        var band = RenderingBand.On(Positive.Curve, Rendering.Mid);
        var aim = band.Aim!.Value.LuxSeconds;
        var expected = Normal.CDF(0, spread, Math.Log2(band.High!.Value.LuxSeconds / aim)) - Normal.CDF(0, spread, Math.Log2(band.Low.LuxSeconds / aim));

        // A step averaged over a grid of 21 points is good to a few hundredths.
        Assert.Equal(expected, forecast.Odds.Fraction, 0.04);
    }

    [Fact]
    [OwnRule]
    public void Several_tones_agree_with_a_simulation()
    {
        PlacedTone[] tones =
        [
            Tone("doorway", Rendering.OpenShadow, 500, 0.2),
            Tone("wall", Rendering.Mid, 2200, 0.2),
            Tone("elevator", Rendering.TexturedHighlight, 6000, 0.2),
        ];
        var errors = new ExposureErrors();
        var planner = Planner(Positive, tones, 12000, errors);
        var forecast = planner.Recommend();
        var used = errors with { Failure = Positive.FailureSpread(forecast.Exposure.Time) };
        var response = PaperResponse.Of(Positive, Foramen.Engine.Light.LightColour.Noon);
        var flash = forecast.FlashFraction * FlashEffect.Threshold(Positive.Curve).LuxSeconds;
        var random = new Random(20260501);
        const int Trials = 100_000;
        var keepers = 0;
        for (var i = 0; i < Trials; i++)
        {
            var paper = Normal.Sample(random, 0, used.OfPaper.Value);
            var image = Normal.Sample(random, 0, used.OfImage.Value);
            var flashError = Normal.Sample(random, 0, used.Flash.Value);
            keepers += Array.TrueForAll(tones, tone =>
            {
                var band = RenderingBand.On(Positive.Curve, tone.Rendering);
                var light = response.EffectiveExposure(tone.OnSheet, 1, forecast.Exposure.Time).LuxSeconds
                    * Math.Pow(2, image + Normal.Sample(random, 0, tone.MeterSpread.Value));
                var total = Math.Pow(2, paper) * (light + (flash * Math.Pow(2, flashError)));
                return total >= band.Low.LuxSeconds && total <= band.High!.Value.LuxSeconds;
            }) ? 1 : 0;
        }

        Assert.Equal(keepers / (double)Trials, forecast.Odds.Fraction, 0.01);
    }

    private static ExposureErrors Only(double light) => new()
    {
        Paper = Stops.Zero, Failure = Stops.Zero, Meter = Stops.Zero, Light = Stops.FromValue(light), Colour = Stops.Zero,
        Hole = Stops.Zero, Development = Stops.Zero, Timing = Stops.Zero, Flash = Stops.Zero,
    };
}
