using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>What is said of a tone, on a straight curve D = 1.5 ± 2·lg H from 0 to 4 without failure: lg H = ±(D − 1.5)/2, a hundred seconds.</summary>
public class ToneForecastTests
{
    private const double Seconds = 100;

    private static readonly ExposureErrors NoErrors = new()
    {
        Paper = Stops.Zero, Meter = Stops.Zero, Light = Stops.Zero, Colour = Stops.Zero, Hole = Stops.Zero, Development = Stops.Zero, Timing = Stops.Zero, Flash = Stops.Zero,
    };

    // Bands by ADR 0004: mid from 0.56 to 2.20 on the negative, 2.40 to 0.72 on the positive. Black begins at 0.90 of the range, white 0.04 from the paper.
    [Theory]
    [InlineData(2, Rendering.Mid, 0.03, ToneOutcome.Blocked)]
    [InlineData(2, Rendering.Mid, 0.30, ToneOutcome.TooDark)]
    [InlineData(2, Rendering.Mid, 0.60, ToneOutcome.AsWanted)]
    [InlineData(2, Rendering.Mid, 3.00, ToneOutcome.TooLight)]
    [InlineData(2, Rendering.Mid, 3.58, ToneOutcome.TooLight)]
    [InlineData(2, Rendering.Mid, 3.62, ToneOutcome.Burnt)]
    [InlineData(2, Rendering.OpenShadow, 0.05, ToneOutcome.AsWanted)]
    [InlineData(2, Rendering.MayBurn, 3.00, ToneOutcome.AsWanted)]
    [InlineData(-2, Rendering.Mid, 3.97, ToneOutcome.Blocked)]
    [InlineData(-2, Rendering.Mid, 3.00, ToneOutcome.TooDark)]
    [InlineData(-2, Rendering.Mid, 0.73, ToneOutcome.AsWanted)]
    [InlineData(-2, Rendering.Mid, 0.50, ToneOutcome.TooLight)]
    [InlineData(-2, Rendering.Mid, 0.03, ToneOutcome.Burnt)]
    [InlineData(-2, Rendering.TexturedHighlight, 0.05, ToneOutcome.AsWanted)]
    public void A_tone_is_said_to_come_out_as_its_density_says(double slope, Rendering rendering, double density, ToneOutcome outcome)
    {
        var tone = Forecast(slope, Of(rendering, slope, density), 0).Tones.Single(one => one.Tone.Name == "tone");
        Assert.Equal(density, tone.Density.Value, 1e-9);
        Assert.Equal(outcome, tone.Outcome);
    }

    // The flash alone makes 1.00 on the negative and 3.00 on the positive; what is within 0.04 of that cannot be told from it.
    [Theory]
    [InlineData(2, 1.00, 1.03, ToneOutcome.Blocked)]
    [InlineData(2, 1.00, 1.06, ToneOutcome.AsWanted)]
    [InlineData(-2, 3.00, 2.97, ToneOutcome.Blocked)]
    [InlineData(-2, 3.00, 2.94, ToneOutcome.AsWanted)]
    public void What_cannot_be_told_from_the_flash_is_blocked(double slope, double flashed, double density, ToneOutcome outcome)
    {
        var flash = Exposure(slope, flashed);
        var tone = Of(Rendering.OpenShadow, slope, density, flash);
        Assert.Equal(outcome, Forecast(slope, tone, flash).Tones.Single(one => one.Tone.Name == "tone").Outcome);
    }

    // On a straight line the spread of density is slope times lg 2 a stop: 2·0.30103·√(0.3² + 0.4²) = 0.3010. The grid ends at 3.5 standard deviations.
    [Fact]
    public void The_spread_of_density_is_the_slope_times_that_of_the_exposure()
    {
        var errors = NoErrors with { Paper = Stops.FromValue(0.3), Light = Stops.FromValue(0.4) };
        var tone = Forecast(2, Of(Rendering.Mid, 2, 2), 0, errors).Tones[0];
        Assert.Equal(0.3010, tone.DensitySpread, 0.003);

        // Failure alone is left, a twentieth of a stop for each doubling from 120 s: 0.05·log2 1.2 = 0.01315 stops, 0.00792.
        Assert.Equal(0.00792, Forecast(2, Of(Rendering.Mid, 2, 2), 0).Tones[0].DensitySpread, 0.0001);
    }

    // Where the flash makes nearly all of it, the error of the image's light does not count: 2·0.30103·0.3 = 0.1806.
    [Fact]
    public void The_image_s_error_does_not_move_what_the_flash_has_made()
    {
        var errors = NoErrors with { Paper = Stops.FromValue(0.3), Light = Stops.FromValue(0.4) };
        var flash = Exposure(2, 2);
        var tone = new PlacedTone("tone", Rendering.MayBlock, Lux(1e-6 * flash), 1, 1, Stops.Zero, LuminanceLimit.Exact);
        Assert.Equal(0.1806, Forecast(2, tone, flash, errors).Tones[0].DensitySpread, 0.002);
    }

    // Image 0.3, flash 0.1 in the middle and half of it at a falloff of one half if it comes through the hole: 0.05/0.35 = 1/7; aim 10^−0.45 = 0.35481.
    // Onto the open sheet it does not fall off: 0.1/0.4.
    [Theory]
    [InlineData(true, 0.142857, -0.0197)]
    [InlineData(false, 0.25, 0.1730)]
    public void A_flash_through_the_hole_falls_off_as_the_image_does(bool throughHole, double share, double fromAim)
    {
        var tone = new PlacedTone("tone", Rendering.Mid, Lux(0.3), 1, 0.5, Stops.Zero, LuminanceLimit.Exact);
        var planner = Planner(2, tone, 0.1, NoErrors, throughHole);
        var exposure = new SheetExposure(Duration.FromSeconds(Seconds), Duration.FromSeconds(10));
        var landing = planner.Land(exposure).Single(one => one.Tone.Name == "tone");
        Assert.Equal(share, landing.FlashShare, 1e-6);
        Assert.Equal(fromAim, landing.FromAim!.Value.Value, 1e-4);
        var forecast = planner.Forecast(exposure);
        Assert.Equal(fromAim, forecast.Tones.Single(one => one.Tone.Name == "tone").FromAim!.Value.Value, 1e-4);

        // The first visible tone is at 0.04: 10^−0.73 = 0.18621.
        Assert.Equal(0.1 / 0.18621, forecast.FlashFraction, 1e-5);
        Assert.Equal(0, planner.Land(exposure with { Flash = default })[0].FlashShare);
    }

    [Fact]
    public void Times_out_of_range_are_refused()
    {
        var planner = Planner(2, Of(Rendering.Mid, 2, 2), 0.1, NoErrors, true);
        foreach (var (time, flash) in new[] { (0.001, 0.0), (86_401, 0), (60, 86_401) })
        {
            var exposure = new SheetExposure(Duration.FromSeconds(time), Duration.FromSeconds(flash));
            Assert.Throws<RefusalException>(() => planner.Forecast(exposure));
            Assert.Throws<RefusalException>(() => planner.Land(exposure));
            Assert.Throws<RefusalException>(() => planner.OddsFor(exposure));
        }
    }

    private static double Exposure(double slope, double density) => Math.Pow(10, (density - 1.5) / slope);

    private static Illuminance Lux(double exposure) => Illuminance.FromLux(exposure / Seconds / StraightCurve.Response(2, 1).ActinicFactor);

    private static PlacedTone Of(Rendering rendering, double slope, double density, double flash = 0)
        => new("tone", rendering, Lux(Exposure(slope, density) - flash), 1, 1, Stops.Zero, LuminanceLimit.Exact);

    private static ExposureForecast Forecast(double slope, PlacedTone tone, double flash, ExposureErrors? errors = null)
        => Planner(slope, tone, flash, errors ?? NoErrors, true)
            .Forecast(new SheetExposure(Duration.FromSeconds(Seconds), flash > 0 ? Duration.FromSeconds(10) : default));

    // A flash of ten seconds gives this exposure. Another tone keeps the planner content where the one in question may burn or block.
    private static ExposurePlanner Planner(double slope, PlacedTone tone, double flash, ExposureErrors errors, bool throughHole)
    {
        var onSheet = Illuminance.FromLux(flash / 10 / StraightCurve.Response(slope, 1).ActinicFactor);
        return new ExposurePlanner(
            StraightCurve.Response(slope, 1),
            [tone, new PlacedTone("wall", Rendering.Mid, Lux(1), 1, 1, Stops.Zero, LuminanceLimit.Exact)],
            flash <= 0 ? FlashSetup.None : throughHole ? FlashSetup.AtSurface(onSheet) : FlashSetup.OpenSheet(onSheet),
            errors);
    }
}
