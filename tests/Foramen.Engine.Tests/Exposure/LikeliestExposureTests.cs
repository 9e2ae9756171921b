using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using MathNet.Numerics.Distributions;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>One tone under normal errors: the odds are Φ(high/s) − Φ(low/s), greatest in the middle of its band.</summary>
public class LikeliestExposureTests
{
    // The mid-tone's band on the straight negative: lg H from −0.47 to 0.35 (ADR 0004), 2.724 stops, its middle −0.06; aimed at is −0.45.
    private const double Width = 0.82 / 0.30103;

    // s = √(0.5² + 0.5²): 2·Φ(1.362/0.7071) − 1 = 0.9459.
    [Fact]
    public void The_likeliest_single_tone_lies_in_the_middle_of_its_band()
    {
        var planner = Straight(Only(light: 0.5), 0.5);
        var likeliest = planner.Likeliest();
        Assert.Equal(-0.06, Math.Log10(likeliest.Time.Seconds / 100), 0.05);
        Assert.Equal(0.9459, planner.OddsFor(likeliest).Fraction, 0.006);
        Assert.Equal(default, likeliest.Flash);

        // The least loss is where it is aimed at.
        Assert.Equal(-0.45, Math.Log10(planner.Recommend().Exposure.Time.Seconds / 100), 1e-4);
    }

    // More range than the paper holds, so that time and flash both matter.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_neighbour_is_likelier(bool positive)
    {
        var paper = positive ? Positive : Negative;
        PlacedTone[] tones = [Tone("doorway", Rendering.OpenShadow, 400), Tone("wall", Rendering.Mid, 2000), Tone("elevator", Rendering.TexturedHighlight, 7000)];
        var planner = Planner(paper, tones, 10000);
        var (recommended, likeliest) = (planner.Recommend(), planner.Likeliest());
        var odds = planner.OddsFor(likeliest).Fraction;
        Assert.True(odds >= recommended.Odds.Fraction);
        var metered = paper.Failure.MeteredSecondsFor(likeliest.Time.Seconds);
        foreach (var stops in new[] { 0.0625, -0.0625, 0.5, -0.5 })
        {
            var there = likeliest with { Time = Duration.FromSeconds(paper.Failure.SecondsNeeded(metered * Math.Pow(2, stops))) };
            Assert.True(planner.OddsFor(there).Fraction <= odds + 0.0011, $"{stops} stops: {planner.OddsFor(there).Fraction} > {odds}");
        }

        // As strong a flash as is worth a thirty-second of the threshold more or less.
        var fraction = planner.Forecast(likeliest).FlashFraction;
        var flashMetered = paper.Failure.MeteredSecondsFor(Math.Max(likeliest.Flash.Seconds, 0.01));
        foreach (var more in new[] { 1 / 32.0, -1 / 32.0 })
        {
            if (fraction > 0 && fraction + more is >= 0 and <= ExposurePlanner.StrongestFlash)
            {
                var there = likeliest with { Flash = Duration.FromSeconds(paper.Failure.SecondsNeeded(flashMetered * (fraction + more) / fraction)) };
                Assert.True(planner.OddsFor(there).Fraction <= odds + 0.0011, $"flash {fraction + more}: {planner.OddsFor(there).Fraction} > {odds}");
            }
        }
    }

    [Fact]
    public void Without_a_surface_to_flash_at_there_is_no_flash()
    {
        PlacedTone[] tones = [Tone("doorway", Rendering.OpenShadow, 150), Tone("elevator", Rendering.TexturedHighlight, 8000)];
        Assert.Equal(default, Planner(Positive, tones).Likeliest().Flash);
    }

    // Meter, paper and reading are off alike on both sheets: s = √(0.4² + 0.5² + 0.6²) = 0.8775. From the middle of the band, two sheets d apart, d no more than
    // the band is wide, together hold a band that is wider by d.
    [Fact]
    public void Two_sheets_together_hold_a_band_wider_by_what_they_are_apart()
    {
        var planner = Straight(Only(0, paper: 0.4, meter: 0.5), 0.6);
        var middle = planner.Forecast(new SheetExposure(Duration.FromSeconds(100 * Math.Pow(10, -0.06)), default));
        var s = Math.Sqrt(0.16 + 0.25 + 0.36);
        Assert.Equal((2 * Normal.CDF(0, s, Width / 2)) - 1, middle.Odds.Fraction, 0.006);
        var bracket = planner.BracketAround(middle);
        Assert.InRange(bracket.Spacing.Value, 1, 2.75);
        var spacing = Math.Min(bracket.Spacing.Value, Width);
        Assert.Equal((2 * Normal.CDF(0, s, (Width + spacing) / 2)) - 1, bracket.OddsOfOne.Fraction, 0.02);
        Assert.Equal(bracket.Spacing.Value, Math.Log2(bracket.Second.Time.Seconds / bracket.First.Time.Seconds), 1e-9);
        Assert.Equal(middle.Exposure.Time.Seconds, Math.Sqrt(bracket.First.Time.Seconds * bracket.Second.Time.Seconds), 1e-6);
    }

    // Each error alone, larger than any other: it is what limits the odds, and the readings of tones among them.
    [Fact]
    public void Readings_of_tones_may_be_what_limits_the_odds()
    {
        var forecast = Straight(new ExposureErrors(), 1.5).Forecast(new SheetExposure(Duration.FromSeconds(100 * Math.Pow(10, -0.06)), default));
        Assert.Equal(ErrorSource.ToneReadings, forecast.LimitedBy);
        Assert.All(forecast.Limits.Zip(forecast.Limits.Skip(1)), pair => Assert.True(pair.First.Share >= pair.Second.Share));

        // Without them: √(0.35² + 0.2² + 0.25² + 0.2² + 0.3² + 0.14² + 0.02²) = 0.6123; failure from 120 s to 87 s adds 0.05·0.46.
        var rest = Math.Sqrt(0.1225 + 0.04 + 0.0625 + 0.04 + 0.09 + 0.0196 + 0.0004 + Math.Pow(0.05 * Math.Log2(120 / 87.1), 2));
        Assert.Equal((2 * Normal.CDF(0, rest, Width / 2)) - 1, forecast.Limits[0].OddsWithout.Fraction, 0.02);
        Assert.Equal(rest, forecast.TotalSpread.Value, 1e-4);
    }

    private static ExposurePlanner Straight(ExposureErrors errors, double reading)
    {
        var response = StraightCurve.Response(2, 1);
        return new ExposurePlanner(
            response,
            [new PlacedTone("wall", Rendering.Mid, Illuminance.FromLux(0.01 / response.ActinicFactor), 1, 1, Stops.FromValue(reading), LuminanceLimit.Exact)],
            FlashSetup.None,
            errors);
    }

    private static ExposureErrors Only(double light, double paper = 0, double meter = 0) => new()
    {
        Paper = Stops.FromValue(paper), Meter = Stops.FromValue(meter), Light = Stops.FromValue(light), Colour = Stops.Zero,
        Hole = Stops.Zero, Development = Stops.Zero, Timing = Stops.Zero, Flash = Stops.Zero,
    };
}
