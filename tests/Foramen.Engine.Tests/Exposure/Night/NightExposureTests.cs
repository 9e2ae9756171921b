using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;

namespace Foramen.Engine.Tests.Exposure.Night;

/// <summary>Long exposures with their doubt, and the minutes in which sky and lamps balance.</summary>
public class NightExposureTests
{
    private static readonly GeographicPosition Basin = GeographicPosition.FromDegrees(52.3, 5.1);

    // Schwarzschild: t = t_m^(1/p). With a speed found at two minutes and p 0.90 ± 0.05, an exposure of T seconds is one in which T·(T/120)^(±0.05/0.90…) may be right:
    // with p 0.95 through the same point, t_m·120^0.05 = T'^0.95.
    [Fact]
    [Source("schwarzschild-1900", Basis.Worked)]
    public void The_doubt_grows_with_the_doublings_beyond_where_the_speed_was_found()
    {
        var response = PaperResponse.Of(ExposureExamples.Positive, LightColour.Lamp);
        var night = NightExposure.Of(CameraExamples.BoxA, response, Luminance.FromCandelasPerSquareMetre(4), Rendering.Mid);
        var metered = Math.Pow(night.Time.Seconds, 0.90);
        Assert.Equal(Math.Pow(metered * Math.Pow(120, 0.05), 1 / 0.95), night.Shorter.Seconds, 1e-6 * night.Time.Seconds);
        Assert.Equal(Math.Pow(metered * Math.Pow(120, -0.05), 1 / 0.85), night.Longer.Seconds, 1e-6 * night.Time.Seconds);
        Assert.Equal(0.05 * Math.Log2(night.Time.Seconds / 120), night.FailureSpread.Value, 1e-9);
        Assert.True(night.Time.Seconds > 120 && night.Shorter < night.Time && night.Time < night.Longer);

        var moonlit = NightExposure.Of(CameraExamples.BoxA, response, Luminance.FromCandelasPerSquareMetre(0.0143), Rendering.Mid);
        Assert.True(moonlit.IsBeyondPlanning);
        Assert.True(moonlit.FailureSpread.Value > night.FailureSpread.Value);
        Assert.Throws<RefusalException>(() => NightExposure.Of(CameraExamples.BoxA, response, default, Rendering.Mid));
    }

    // Lamps at EV 5 are 12.5·2⁵/100 = 4 cd/m², as a sky under 12.6 lx. USNO Circular 171 has 3.4 lx at the end of civil twilight (−6°) and some 700 lx at sunset, so that is
    // between −4° and −6°.
    [Fact]
    [Source("janiczek-deyoung-1987", Basis.Memory)]
    [Source("iso-2720", "K 12.5", Basis.Worked)]
    public void Sky_and_lamps_balance_once_in_the_evening_and_once_in_the_morning()
    {
        var (from, to) = (At(3, 20, 0), At(3, 21, 0));
        var lamps = LightMeter.Usual.LuminanceFrom(ExposureValue.FromAtIso100(5));
        var windows = DuskBalance.Find(Basin, lamps, Stops.FromValue(1), from, to);
        Assert.Equal(2, windows.Count);
        Assert.True(windows[0].Start.Hour < 12 && windows[1].Start.Hour > 12);
        foreach (var window in windows)
        {
            Assert.InRange(Sun.At(window.Start + (window.Length / 2), Basin).TrueElevation.Degrees, -6, -4);
            Assert.InRange(window.Length.TotalMinutes, 3, 15);
        }

        // At the ends the difference is one stop, one way and the other.
        double Stops_(DateTimeOffset instant) => Math.Log2(
            DuskBalance.SkyLuminance(Sun.At(instant, Basin).TrueElevation, NightGround.NaturalSky.CandelasPerSquareMetre) / lamps.CandelasPerSquareMetre);
        Assert.Equal(1, Stops_(windows[1].Start), 0.01);
        Assert.Equal(-1, Stops_(windows[1].End), 0.01);
    }

    [Fact]
    public void Under_a_town_glow_brighter_than_the_lamps_nothing_balances()
        => Assert.Empty(DuskBalance.Find(
            Basin, Luminance.FromCandelasPerSquareMetre(0.01), Stops.FromValue(1), At(3, 20, 0), At(3, 21, 0), Luminance.FromCandelasPerSquareMetre(0.05)));

    [Fact]
    public void Out_of_range_is_refused()
    {
        Assert.Throws<RefusalException>(() => DuskBalance.Find(Basin, default, Stops.FromValue(1), At(3, 20, 0), At(3, 21, 0)));
        Assert.Throws<RefusalException>(() => DuskBalance.Find(Basin, Luminance.FromCandelasPerSquareMetre(1), Stops.FromValue(9), At(3, 20, 0), At(3, 21, 0)));
        Assert.Throws<RefusalException>(() => DuskBalance.Find(Basin, Luminance.FromCandelasPerSquareMetre(1), Stops.FromValue(1), At(3, 21, 0), At(3, 20, 0)));
    }

    private static DateTimeOffset At(int month, int day, int hour) => new(2024, month, day, hour, 0, 0, TimeSpan.FromHours(1));
}
