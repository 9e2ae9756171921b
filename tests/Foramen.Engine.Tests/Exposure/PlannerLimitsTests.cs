using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>
/// Least loss, tolerance, odds with a flash and what limits them, on a straight curve D = 1.5 ± 2·lg H from 0 to 4 without failure. Bands by ADR 0004 as shares of the
/// net density: a negative's shadow from 0.01 over 0.10 to 0.35, lg H −0.73, −0.55, −0.05; its mid-tone from 0.14 over 0.15 to 0.55, lg H −0.47, −0.45, 0.35.
/// </summary>
public class PlannerLimitsTests
{
    private const double Seconds = 100;

    private const double StopsOfDecade = 3.321928;

    private const double ShadowBelow = 0.18 * StopsOfDecade;

    private const double ShadowAbove = 0.50 * StopsOfDecade;

    // Both inside their bands: (x/below)² + ((x + 1)/above)² is least at x = −(1/above²)/(1/below² + 1/above²).
    [Fact]
    public void Two_tones_a_stop_apart_share_the_loss()
    {
        var planner = Planner(2, [Shadow(0.001), Shadow(0.002)], NoErrors());
        var (below, above) = (1 / (ShadowBelow * ShadowBelow), 1 / (ShadowAbove * ShadowAbove));
        Assert.Equal(-above / (below + above), OffAim(planner, 0.001), 1e-3);
    }

    // Three stops above, the upper one is outside its band and pulls with 2/above however far it is: 2x/below² = −2/above.
    [Fact]
    public void A_tone_outside_its_band_pulls_no_harder_the_farther_it_is()
    {
        foreach (var ratio in new[] { 8, 12 })
        {
            var planner = Planner(2, [Shadow(0.001), Shadow(0.001 * ratio)], NoErrors());
            Assert.Equal(-ShadowBelow * ShadowBelow / ShadowAbove, OffAim(planner, 0.001), 1e-3);
        }
    }

    // At the aim, the band of the tolerance reaches 0.02·t decades down and 0.80·t up; light and reading are off by √2 stops together.
    [Theory]
    [InlineData(0.25)]
    [InlineData(1)]
    [InlineData(4)]
    public void A_tolerance_stretches_the_band_about_the_aim(double tolerance)
    {
        var planner = Planner(2, [Mid(0.01, 1)], NoErrors() with { Light = Stops.FromValue(1) }, tolerance: tolerance);
        var odds = planner.OddsFor(At(Math.Pow(10, -0.45) / 0.01)).Fraction;
        var (low, high) = (-0.02 * tolerance * StopsOfDecade, 0.80 * tolerance * StopsOfDecade);
        Assert.Equal(Normal.CDF(0, Math.Sqrt(2), high) - Normal.CDF(0, Math.Sqrt(2), low), odds, 0.01);
    }

    // Mid-tones reach to D = 2.20, 1.60 above the aim: 1.25 times as far is 2.60, half as far 1.40.
    [Theory]
    [InlineData(1, 2.4, ToneOutcome.TooLight)]
    [InlineData(1.25, 2.4, ToneOutcome.AsWanted)]
    [InlineData(1, 1.5, ToneOutcome.AsWanted)]
    [InlineData(0.5, 1.5, ToneOutcome.TooLight)]
    public void What_is_said_of_a_tone_counts_the_tolerance(double tolerance, double density, ToneOutcome outcome)
    {
        var planner = Planner(2, [Mid(Math.Pow(10, (density - 1.5) / 2) / Seconds)], NoErrors(), tolerance: tolerance);
        Assert.Equal(outcome, planner.Forecast(At(Seconds)).Tones[0].Outcome);
    }

    [Theory]
    [InlineData(0.24)]
    [InlineData(4.01)]
    public void A_tolerance_out_of_range_is_refused(double tolerance)
        => Assert.Throws<RefusalException>(() => Planner(2, [Mid(0.01)], NoErrors(), tolerance: tolerance));

    [Fact]
    public void What_cannot_be_planned_says_why()
    {
        Assert.Contains("no tones", Assert.Throws<RefusalException>(() => Planner(2, [], NoErrors())).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => Planner(2, [Mid(0.01) with { ActinicRatio = 0 }], NoErrors()));

        // The aim in seven hours, and in five.
        var aim = Math.Pow(10, -0.45);
        var message = Assert.Throws<RefusalException>(() => Planner(2, [Mid(aim / (7 * 3600))], NoErrors()).Recommend()).Message;
        Assert.Contains("need 7 hours", message, StringComparison.Ordinal);
        Assert.Contains("beyond 6 hours", message, StringComparison.Ordinal);
        Assert.Equal(5 * 3600, Planner(2, [Mid(aim / (5 * 3600))], NoErrors()).Recommend().Exposure.Time.Seconds, 5.0);
    }

    // A positive's mid-tone reaches from lg H −0.45 to 0.39 and is aimed at near the far end: likelier is less.
    [Fact]
    public void A_positive_s_likeliest_time_is_shorter_than_the_aimed_at()
    {
        var planner = Planner(-2, [Mid(0.01)], NoErrors() with { Light = Stops.FromValue(0.7) });
        Assert.Equal(-0.03, Math.Log10(planner.Likeliest().Time.Seconds / Seconds), 0.05);
    }

    // The aim is five of the smallest spreads from the edge already: nothing is gained by leaving it.
    [Fact]
    public void Where_nothing_is_gained_the_likeliest_is_the_aimed_at()
    {
        var planner = Planner(2, [Shadow(0.01)], NoErrors() with { Light = Stops.FromValue(ShadowBelow / 5) });
        Assert.Equal(planner.Recommend().Exposure.Time.Seconds, planner.Likeliest().Time.Seconds, 1e-6);
    }

    // Of a wide error, paper 1.2, meter 1.2, reading 1.0, s = 1.97, two sheets hold a band wider by what they are apart, up to the band's own width: 2.72 stops,
    // so 2.50 or 2.75. Four tones read alike without error are as one.
    [Fact]
    public void Two_sheets_of_a_doubtful_paper_are_as_far_apart_as_the_band_is_wide()
    {
        var errors = NoErrors() with { Paper = Stops.FromValue(1.2), Meter = Stops.FromValue(1.2) };
        var planner = Planner(2, [Mid(0.01, 1.0)], errors);
        var bracket = planner.BracketAround(planner.Forecast(At(Seconds * Math.Pow(10, -0.06))));
        Assert.InRange(bracket.Spacing.Value, 2.25, 3);
        var s = Math.Sqrt(1.44 + 1.44 + 1);
        Assert.Equal((2 * Normal.CDF(0, s, 0.82 * StopsOfDecade)) - 1, bracket.OddsOfOne.Fraction, 0.03);

        var one = Planner(2, [Mid(0.01)], errors);
        var four = Planner(2, [Mid(0.01), Mid(0.01), Mid(0.01), Mid(0.01)], errors);
        var middle = one.Forecast(At(Seconds * Math.Pow(10, -0.06)));
        Assert.Equal(one.BracketAround(middle).OddsOfOne.Fraction, four.BracketAround(middle).OddsOfOne.Fraction, 1e-9);
    }

    // The flash of 0.1 takes its part of the band from 0.3388 to 2.2387: 0.2388 to 2.1387 is left to the image, 3.163 stops, the middle 0.7147. A meter off by 1.5
    // stops: 2·Φ(1.581/1.5) − 1 = 0.708; two sheets three stops apart 2·Φ(3.081/1.5) − 1 = 0.960.
    [Fact]
    public void A_flash_takes_its_part_of_the_band()
    {
        var planner = Planner(2, [Mid(0.01)], NoErrors() with { Meter = Stops.FromValue(1.5) }, flash: 0.1);
        var forecast = planner.Forecast(new SheetExposure(Duration.FromSeconds(71.47), Duration.FromSeconds(10)));
        Assert.Equal(0.708, forecast.Odds.Fraction, 0.03);
        Assert.Equal(0.708, forecast.Tones[0].ChanceAsWanted.Fraction, 0.03);
        var bracket = planner.BracketAround(forecast);
        Assert.InRange(bracket.Spacing.Value, 2.5, 3);
        Assert.Equal(0.960, bracket.OddsOfOne.Fraction, 0.02);
    }

    // A flash to D = 3.98 leaves less than the 0.04 that the eye needs, however far the band is stretched.
    [Fact]
    public void After_a_flash_that_leaves_nothing_to_tell_there_are_no_odds()
    {
        var flash = Math.Pow(10, 1.24);
        var planner = Planner(2, [Mid(0.01)], NoErrors() with { Light = Stops.FromValue(0.5) }, flash: flash, tolerance: 4);
        Assert.Equal(0, planner.OddsFor(new SheetExposure(Duration.FromSeconds(1000), Duration.FromSeconds(10))).Fraction);
    }

    // Odds 2·Φ(1.362/s) − 1 from the middle of the band, 2.724 stops wide, s of light 1.0, paper 0.8 and reading 0.5 together, and without light or paper: the
    // shares are as what each would gain.
    [Fact]
    public void What_each_error_costs_is_shared_out()
    {
        var errors = NoErrors() with { Light = Stops.FromValue(1.0), Paper = Stops.FromValue(0.8) };
        var forecast = Planner(2, [Mid(0.01, 0.5)], errors).Forecast(At(Seconds * Math.Pow(10, -0.06)));
        double Odds(double square) => (2 * Normal.CDF(0, Math.Sqrt(square), 0.41 * StopsOfDecade)) - 1;
        var all = Odds(1.89);
        var (light, paper) = (Odds(0.89) - all, Odds(1.25) - all);
        Assert.Equal([ErrorSource.Light, ErrorSource.Paper], forecast.Limits.Take(2).Select(limit => limit.Source));
        Assert.Equal(light / paper, forecast.Limits[0].Share / forecast.Limits[1].Share, 0.05);
        Assert.Equal(1, forecast.Limits.Sum(limit => limit.Share), 1e-9);
        Assert.Equal(all + light, forecast.Limits[0].OddsWithout.Fraction, 0.005);
    }

    // At 120 s, where the paper's speed was found, its failure is known as well.
    [Fact]
    public void Where_nothing_limits_nothing_has_a_share()
    {
        var forecast = Planner(2, [Mid(1 / 120.0)], NoErrors()).Forecast(At(120));
        Assert.Equal(1, forecast.Odds.Fraction);
        Assert.All(forecast.Limits, limit => Assert.Equal(0, limit.Share));
        Assert.Equal(Enum.GetValues<ErrorSource>().Except([ErrorSource.SceneRange]), forecast.Limits.Select(limit => limit.Source));
    }

    // Read within three stops, the odds are 2·Φ(1.362/3) − 1 = 0.35: the scene is not too much, its reading is.
    [Fact]
    public void A_tone_read_badly_is_no_scene_too_large()
    {
        var forecast = Planner(2, [Mid(0.01, 3)], NoErrors()).Forecast(At(Seconds * Math.Pow(10, -0.06)));
        Assert.Equal(0.35, forecast.Odds.Fraction, 0.01);
        Assert.Equal(ErrorSource.ToneReadings, forecast.LimitedBy);
    }

    // At the end of the curve half of the errors change nothing: of a normal s cut off at its mean the spread is s·√(1/2 − 1/2π) = 0.5838·s; s = 2·0.30103·0.5.
    [Fact]
    public void The_spread_of_density_ends_where_the_paper_does()
    {
        var planner = Planner(2, [Mid(Math.Pow(10, 1.25) / Seconds)], NoErrors() with { Paper = Stops.FromValue(0.3), Light = Stops.FromValue(0.4) });
        Assert.Equal(0.5838 * 0.30103, planner.Forecast(At(Seconds)).Tones[0].DensitySpread, 0.006);
    }

    private static double OffAim(ExposurePlanner planner, double lux)
        => Math.Log2(planner.Recommend().Exposure.Time.Seconds * lux / Math.Pow(10, -0.55));

    private static SheetExposure At(double seconds) => new(Duration.FromSeconds(seconds), default);

    private static PlacedTone Mid(double effectiveLux, double reading = 0) => Tone(Rendering.Mid, effectiveLux, reading);

    private static PlacedTone Shadow(double effectiveLux) => Tone(Rendering.OpenShadow, effectiveLux, 0);

    private static PlacedTone Tone(Rendering rendering, double effectiveLux, double reading)
        => new("tone", rendering, Illuminance.FromLux(effectiveLux / StraightCurve.Response(2, 1).ActinicFactor), 1, 1, Stops.FromValue(reading), LuminanceLimit.Exact);

    private static ExposureErrors NoErrors() => new()
    {
        Paper = Stops.Zero,
        Meter = Stops.Zero,
        Light = Stops.Zero,
        Colour = Stops.Zero,
        Hole = Stops.Zero,
        Development = Stops.Zero,
        Timing = Stops.Zero,
        Flash = Stops.Zero,
    };

    // Ten seconds give a flash of this effective exposure.
    private static ExposurePlanner Planner(double slope, IReadOnlyList<PlacedTone> tones, ExposureErrors errors, double flash = 0, double tolerance = 1)
    {
        var response = StraightCurve.Response(slope, 1);
        return new ExposurePlanner(
            response,
            tones,
            flash > 0 ? FlashSetup.AtSurface(Illuminance.FromLux(flash / 10 / response.ActinicFactor)) : FlashSetup.None,
            errors,
            tolerance);
    }
}
