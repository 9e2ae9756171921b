using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;
using Foramen.Engine.Tests.Scene.Motion;

namespace Foramen.Engine.Tests.Exposure.Motion;

/// <summary>Presence and visibility against the reference sheet on sensitometry, 9.1, 9.2 and 9.4 (derived there from additive exposure and the photometric distance law).</summary>
public class MotionOnPaperTests
{
    // The table's rows without failure: slope 2 with a least difference of 0.02 (sharp), slope 2.5 with 0.05 (soft).
    [Theory]
    [InlineData(2.0, false, 2, 0.0233)]
    [InlineData(2.0, false, 4, 0.0078)]
    [InlineData(2.0, false, 8, 0.0033)]
    [InlineData(2.0, false, 0, 0.0228)]
    [InlineData(2.0, false, 0.25, 0.0304)]
    [InlineData(2.5, true, 2, 0.0471)]
    [InlineData(2.5, true, 4, 0.0157)]
    [InlineData(2.5, true, 8, 0.0067)]
    [InlineData(2.5, true, 0, 0.0450)]
    [InlineData(2.5, true, 0.25, 0.0600)]
    [Source("additive-exposure", Basis.Worked)]
    public void The_least_share_seen_is_that_of_the_table(double slope, bool soft, double ratio, double share)
        => Assert.Equal(share, OnStraight(slope, 1).LeastShareSeen(ratio, soft)!.Value, 0.00006);

    // Dark (1 − 10^(−δ/(γp)))/(1 − ρ^(1/p)), bright (10^(δ/(γp)) − 1)/(ρ^(1/p) − 1), with δ 0.05, γ 2, p 0.85: 0.06548 for black, 0.01705 for four times as bright.
    [Theory]
    [InlineData(0, 0.06548)]
    [InlineData(4, 0.01705)]
    [Source("schwarzschild-1900", "with additive exposure", Basis.Worked)]
    public void Failure_makes_bright_passers_more_visible_and_dark_ones_less(double ratio, double share)
    {
        Assert.Equal(share, OnStraight(2, 0.85).LeastShareSeen(ratio)!.Value, 0.00002);
        Assert.True(ratio > 1 ? share < OnStraight(2, 1).LeastShareSeen(ratio) : share > OnStraight(2, 1).LeastShareSeen(ratio));
    }

    // 0.00298 of the time: ΔD 0.0026 for black and 0.0077 for four times as bright at slope 2 (9.3): invisible.
    [Theory]
    [InlineData(0, 0.0026)]
    [InlineData(4, 0.0077)]
    [Source("additive-exposure", Basis.Worked)]
    public void A_walker_leaves_no_trace(double ratio, double change)
    {
        var trace = OnStraight(2, 1).Trace(Covering.Of(0.357 / 120, ratio, S(0.357)));
        Assert.Equal(change, Math.Abs(trace.Change), 0.00006);
        Assert.Equal(MotionVerdict.Vanishes, trace.Verdict);
    }

    // 15 km/h are 4.167 m/s: 1.7 m of cycle cover a point for 0.408 s, 0.0034 of two minutes. Black on mid grey, slope 3.2: 3.2·lg(1 − 0.0034) = −0.0047.
    [Fact]
    [Source("additive-exposure", Basis.Worked)]
    public void A_cyclist_vanishes_in_two_minutes_and_fifty_of_them_are_a_ghost()
    {
        var paper = PaperResponse.Of(ExposureExamples.Positive, LightColour.Noon);
        var mid = MidTone(paper, 120);
        var cyclist = new Passers { Width = M(1.7), Speed = MotionSpeed.FromKilometresPerHour(15), Distance = M(20), LuminanceRatio = 0.1 };
        Assert.Equal(0.0034, cyclist.During(S(120)).Share, 0.000005);
        var one = mid.Trace(cyclist.During(S(120)));
        Assert.Equal(MotionVerdict.Vanishes, one.Verdict);
        Assert.InRange(Math.Abs(one.Change), 0.003, 0.006);

        var race = mid.Trace((cyclist with { Number = 50 }).During(S(120)));
        Assert.Equal(MotionVerdict.Ghost, race.Verdict);

        // Dark on a direct positive leaves the sheet darker.
        Assert.True(race.Change > 0);
        Assert.Equal(MotionVerdict.Stays, mid.Trace((cyclist with { Speed = default }).During(S(120))).Verdict);
    }

    // On the curve D = 0.08 + 1.90/(1 + e^(7(x − 0.6))) the ground at x 0.45 has 1.487 (reference sheet, 2.4). The disc is 1.5 times as bright: x 0.45 + 0.1761,
    // D = 0.08 + 1.90/(1 + e^0.1827) = 0.9435. Spokes pass in 0.83 s each, so they count as mean light.
    [Fact]
    [Source("additive-exposure", Basis.Worked)]
    public void The_crank_wheel_is_a_disc_of_density_0_94_on_a_ground_of_1_49()
    {
        var wheel = MotionExamples.Crank;
        var response = Response(Engine.Tests.Paper.PaperExamples.Positive, 1);
        var on = new MotionOnPaper(response, Illuminance.FromLux(Math.Pow(10, 0.45) / 120 / response.ActinicFactor), new SheetExposure(S(120), default), FlashSetup.None);
        var trace = on.Trace(wheel.During(S(120)));
        Assert.Equal(1.487, trace.Bare.Value, 0.0006);
        Assert.Equal(0.9435, trace.Traced.Value, 0.0006);
        Assert.Equal(MotionVerdict.Ghost, trace.Verdict);
    }

    // 10 000 cd, 50 m, hole 0.35, spot 0.45, 10 m/s, f 60: 2.42 lx, 0.0375 s, 0.0907 lx s (9.4): a twelfth of the first tone, 1.13 lx s, of a paper of speed 250, range 110.
    [Fact]
    [Source("lighting-textbook", "distance law", Basis.Worked)]
    public void A_head_lamp_across_the_picture_leaves_nothing()
    {
        var lamp = new PassingLamp { Intensity = LuminousIntensity.FromCandelas(10_000), Distance = M(50), Speed = MotionSpeed.FromMetresPerSecond(10) };
        var spot = Length.FromMillimetres(0.45);
        Assert.Equal(2.42, lamp.InSpot(Length.FromMillimetres(0.35), spot).Lux, 0.005);
        var dwell = lamp.OnPoint(spot, Length.FromMillimetres(60), S(120));
        Assert.Equal(0.0375, dwell.Seconds, 1e-9);
        Assert.Equal(0.0907, dwell.Seconds * lamp.InSpot(Length.FromMillimetres(0.35), spot).Lux, 0.00005);

        // The curve of 2.4 with all its exposures doubled: first tone at 1.13 lx s in lamplight.
        var night = AtNight(Engine.Tests.Paper.PaperExamples.Negative.Faster(Stops.FromValue(-1)));
        Assert.Equal(MotionVerdict.Vanishes, night.Trace(lamp, Length.FromMillimetres(0.35), spot, Length.FromMillimetres(60)).Verdict);
    }

    // A boat with a string of 24 lamps of 20 cd, 15 m away, Box A: spot light 20/225·(0.35/0.45)² = 0.0538 lx. At 0.5 m/s the image goes 2.1 mm/s, 0.214 s a lamp, 5.14 s
    // in all, 0.277 lx s: half of the first tone (0.564). Drifting at 0.05 m/s: ten times as much, 2.77 lx s, above the mid-tone (2).
    [Theory]
    [InlineData(0.5, 0.277, false)]
    [InlineData(0.05, 2.77, true)]
    [Source("lighting-textbook", "distance law", Basis.Worked)]
    public void A_lamp_string_streaks_if_it_is_slow_enough(double speed, double exposure, bool seen)
    {
        var lamps = new PassingLamp { Intensity = LuminousIntensity.FromCandelas(20), Distance = M(15), Speed = MotionSpeed.FromMetresPerSecond(speed), Number = 24 };
        var (hole, spot, f) = (Length.FromMillimetres(0.35), Length.FromMillimetres(0.45), Length.FromMillimetres(63));
        var h = lamps.InSpot(hole, spot).Lux * lamps.OnPoint(spot, f, S(600)).Seconds;
        Assert.Equal(exposure, h, exposure * 0.003);
        Assert.Equal(seen, AtNight(Engine.Tests.Paper.PaperExamples.Negative).Trace(lamps, hole, spot, f).IsSeen);
    }

    [Fact]
    public void The_ways_to_hide_something_do_hide_it()
    {
        var response = PaperResponse.Of(ExposureExamples.Positive, LightColour.Noon);
        var flash = FlashSetup.AtSurface(Illuminance.FromLux(0.05));
        var on = MidTone(response, 120, flash);
        var walkers = new Passers { Width = M(0.5), Speed = MotionSpeed.FromMetresPerSecond(1), Distance = M(10), LuminanceRatio = 0.1, Number = 40 };
        Assert.NotEqual(MotionVerdict.Vanishes, on.Trace(walkers.During(S(120))).Verdict);
        var ways = on.WaysFor(walkers, CameraExamples.BoxA)!;

        // A smaller hole for the longer time keeps the tone and hides them; less than that does not.
        var law = response.Paper.Failure;
        double Lux(double seconds) => MidLux(response, 120) * law.MeteredSecondsFor(120) / law.MeteredSecondsFor(seconds);
        MotionTrace At(double seconds) => new MotionOnPaper(response, Illuminance.FromLux(Lux(seconds)), new SheetExposure(S(seconds), default), flash).Trace(walkers.During(S(seconds)));
        var needed = ways.TimeToHide!.Value.Seconds;
        Assert.Equal(MotionVerdict.Vanishes, At(needed * 1.05).Verdict);
        Assert.Equal(MotionVerdict.Ghost, At(needed * 0.95).Verdict);
        Assert.Equal(Lux(needed) / Lux(120), Math.Pow(ways.HoleToHide!.Value.Millimetres / 0.35, 2), 1e-6);

        // Covering the hole for so long leaves what is just not seen.
        var left = Covering.Of((walkers.Covered!.Value.Seconds - ways.CoverHoleFor!.Value.Seconds) / 120, 0.1, walkers.Dwell!.Value);
        Assert.Equal(MotionOnPaper.SoftSeen, Math.Abs(on.Trace(left).Change), 1e-4);

        // As many as it takes to be seen, and one fewer.
        Assert.True(on.Trace((walkers with { Number = ways.NumberToShow!.Value }).During(S(120))).IsSeen);
        Assert.False(on.Trace((walkers with { Number = ways.NumberToShow!.Value - 1 }).During(S(120))).IsSeen);
        Assert.True(on.Trace(Covering.Of(ways.StandStillToShow!.Value.Seconds * 1.001 / 120, 0.1, S(ways.StandStillToShow!.Value.Seconds * 1.001), softEdged: false)).IsSeen);
        Assert.Null(on.WaysFor(walkers with { Speed = default }, CameraExamples.BoxA));
    }

    // A flash lifts the ground and what passes alike, so their ratio falls.
    [Fact]
    public void Enough_flash_hides_a_faint_band_before_a_light_ground()
    {
        var response = PaperResponse.Of(ExposureExamples.Positive, LightColour.Noon);
        var flash = FlashSetup.AtSurface(Illuminance.FromLux(0.05));
        var lux = Illuminance.FromLux(MidLux(response, 120) * 1.6);
        var walkers = new Passers { Width = M(0.5), Speed = MotionSpeed.FromMetresPerSecond(1), Distance = M(10), LuminanceRatio = 0.1, Number = 18 };
        MotionOnPaper With(double fraction) => new(
            response,
            lux,
            new SheetExposure(S(120), fraction <= 0 ? default : response.TimeFor(LuminousExposure.FromLuxSeconds(fraction * FlashEffect.Threshold(response.Paper.Curve).LuxSeconds), flash.OnSheet, 1)),
            flash);
        walkers = walkers with { Number = With(0).WaysFor(walkers, CameraExamples.BoxA)!.NumberToShow!.Value };
        Assert.True(With(0).Trace(walkers.During(S(120))).IsSeen);
        var fraction = With(0).WaysFor(walkers, CameraExamples.BoxA)!.FlashFractionToHide!.Value;
        Assert.InRange(fraction, 0.05, 1.5);
        Assert.False(With(fraction).Trace(walkers.During(S(120))).IsSeen);
        Assert.True(With(fraction - 0.06).Trace(walkers.During(S(120))).IsSeen);
    }

    // What is there for all of the time is what it is; for none of it, the background. Additive exposure lies between, and more of it is more.
    [Fact]
    public void A_trace_lies_between_background_and_thing() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 8], Gen.Double[0.7, 1], Gen.Bool).Sample((share, ratio, p, fast) =>
    {
        var on = OnStraight(2, p);
        double Change(double part) => on.Trace(Covering.Of(part, ratio, S(fast ? 0.1 : 10))).Change;
        Assert.Equal(0, Change(0), 1e-9);
        Assert.InRange(Change(share), Math.Min(0, Change(1)) - 1e-9, Math.Max(0, Change(1)) + 1e-9);
        Assert.True(Math.Abs(Change(share)) <= Math.Abs(Change(Math.Min(1, share + 0.1))) + 1e-9);
    });

    // Nothing to be seen even standing still: as bright as what is behind it.
    [Fact]
    public void What_is_as_bright_as_its_ground_is_never_seen()
    {
        var on = OnStraight(2, 1);
        Assert.Null(on.LeastShareSeen(1));
        var walkers = new Passers { Width = M(0.5), Speed = MotionSpeed.FromMetresPerSecond(1), Distance = M(10), LuminanceRatio = 1, Number = 4 };
        var ways = on.WaysFor(walkers, CameraExamples.BoxA)!;
        Assert.Equal(0, ways.FlashFractionToHide);
        Assert.Null(ways.TimeToHide);
    }

    // Half the light more for a tenth of two minutes, in one stretch or in many: without failure the mean of the light counts, 2·lg(1 + 0.1·0.5) = 0.0424.
    [Theory]
    [InlineData(0.5)]
    [InlineData(12)]
    public void Without_failure_it_does_not_matter_how_long_each_covering_lasts(double atATime)
        => Assert.Equal(0.0424, OnStraight(2, 1).Trace(Covering.Of(0.1, 1.5, S(atATime))).Change, 0.00005);

    [Fact]
    public void Grounds_and_times_out_of_range_are_refused()
    {
        var response = StraightCurve.Response(2, 1);
        MotionOnPaper On(double lux, double seconds) => new(response, Illuminance.FromLux(lux), new SheetExposure(S(seconds), default), FlashSetup.None);
        Assert.Throws<RefusalException>(() => On(0, 120));
        Assert.Throws<RefusalException>(() => On(0.01, 0.001));
        Assert.Throws<RefusalException>(() => On(0.01, 86_401));
        Assert.Throws<RefusalException>(() => On(0.01, 120).LeastShareSeen(-0.1));
        Assert.Throws<RefusalException>(() => On(0.01, 120).LeastShareSeen(10_001));
    }

    private static MotionOnPaper OnStraight(double slope, double exponent)
    {
        var response = StraightCurve.Response(slope, exponent);
        var lux = 1 / response.ActinicFactor / response.Paper.Failure.MeteredSecondsFor(120);
        return new MotionOnPaper(response, Illuminance.FromLux(lux), new SheetExposure(S(120), default), FlashSetup.None);
    }

    private static MotionOnPaper MidTone(PaperResponse response, double seconds, FlashSetup? flash = null)
        => new(response, Illuminance.FromLux(MidLux(response, seconds)), new SheetExposure(S(seconds), default), flash ?? FlashSetup.None);

    private static double MidLux(PaperResponse response, double seconds)
        => RenderingBand.On(response.Paper.Curve, Rendering.Mid).Aim!.Value.LuxSeconds / response.ActinicFactor / response.Paper.Failure.MeteredSecondsFor(seconds);

    private static PaperResponse Response(CharacteristicCurve curve, double exponent) => PaperResponse.Of(
        StraightCurve.Response(2, exponent).Paper with { Curve = curve }, LightColour.Lamp);

    // Lamplight, ten minutes, a ground far below anything that shows.
    private static MotionOnPaper AtNight(CharacteristicCurve curve)
        => new(Response(curve, 1), Illuminance.FromLux(1e-5), new SheetExposure(S(600), default), FlashSetup.None);

    private static Length M(double metres) => Length.FromMetres(metres);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
