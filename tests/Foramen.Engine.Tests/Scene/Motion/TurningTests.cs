using CsCheck;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Scene.Motion.MotionExamples;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>Wheels: angular speed 360°/T, arc length r·θ, and shares of time that can be counted on fingers.</summary>
public class TurningTests
{
    // 18° each second. 120 s: 6 turns. Six spokes: every point has seen the due share after a sixth of a turn, 3.33 s.
    [Fact]
    [Source("kinematics", "360°/T", Basis.Worked)]
    public void The_crank_wheel_becomes_an_even_disc()
    {
        Assert.Equal(18, Crank.ArcDegrees(S(1)), 1e-12);
        Assert.Equal(6, Crank.TurnsIn(S(120)), 1e-12);
        Assert.Equal(20 / 6.0, Crank.TimeForFullDisc.Seconds, 1e-12);
        var (least, mean, most) = Crank.SpokeShare(S(120));
        Assert.Equal(0.25, least, 1e-9);
        Assert.Equal(0.25, mean, 1e-9);
        Assert.Equal(0.25, most, 1e-9);
    }

    // In 1 s a rim point goes 2π·0.3/20 = 0.0942 m, on the sheet at f 63: 0.0942·63/6 = 0.990 mm. The whole circle is 1.885 m, 19.79 mm; no streak is longer.
    [Fact]
    [Source("kinematics", "r·θ", Basis.Worked)]
    public void The_rim_draws_an_arc_and_then_the_whole_circle()
    {
        var f = Length.FromMillimetres(63);
        Assert.Equal(0.990, Crank.StreakAtRim(f, S(1)).Millimetres, 0.0005);
        Assert.Equal(19.79, Crank.StreakAtRim(f, S(120)).Millimetres, 0.005);
    }

    // A point shows through three quarters of the time, covered for a quarter of a spoke's period of 3.33 s at a time, or for less where it turns for less.
    [Fact]
    public void Spokes_cover_what_shows_between_them()
    {
        var covering = Crank.During(S(120));
        Assert.Equal((0.25, 3.0), (Math.Round(covering.Share, 9), covering.LuminanceRatio));
        Assert.Equal(20 / 24.0, covering.AtATime.Seconds, 1e-12);
        Assert.Equal(0.5, Crank.During(S(0.5)).AtATime.Seconds, 1e-12);
    }

    // Half a spoke's period (1.667 s): 0.833 s of spoke at most, so half of the time for some points and never for others.
    [Fact]
    public void Before_the_disc_is_full_some_points_see_more_of_the_spokes()
    {
        var (least, _, most) = Crank.SpokeShare(S(20 / 12.0));
        Assert.Equal(0, least, 1e-9);
        Assert.Equal(0.5, most, 1e-9);
    }

    // A turn in a day: 360°·120/86 400 = 0.5°, r·θ = 2.6 mm, on the sheet 0.027 mm: nothing that a spot of 0.4 mm can show.
    [Fact]
    [Source("kinematics", "r·θ", Basis.Worked)]
    public void A_turn_so_slow_that_nothing_moves_looks_still()
    {
        var slow = Crank with { TurnTime = S(86_400) };
        Assert.Equal(0.0275, slow.StreakAtRim(Length.FromMillimetres(63), S(120)).Millimetres, 0.0001);
        Assert.True(slow.LooksStill(Length.FromMillimetres(63), S(120), Length.FromMillimetres(0.2)));
        Assert.False(Crank.LooksStill(Length.FromMillimetres(63), S(120), Length.FromMillimetres(0.2)));
    }

    // The shares counted at 2000 places of the circle, one spoke's period after the other: another way to the same numbers.
    [Fact]
    public void Shares_agree_with_counting() => Gen.Select(Gen.Int[1, 12], Gen.Double[0.05, 0.95], Gen.Double[0.05, 5]).Sample((spokes, fill, turns) =>
    {
        var wheel = Crank with { Spokes = spokes, Fill = fill };
        var (least, mean, most) = wheel.SpokeShare(S(20 * turns));
        var periods = turns * spokes;
        double Covered(double phase) => Enumerable.Range(0, 4000).Count(i => (phase + (periods * (i + 0.5) / 4000)) % 1 < fill) / 4000.0;
        var shares = Enumerable.Range(0, 200).Select(i => Covered(i / 200.0)).ToList();
        Assert.InRange(shares.Min(), least - 0.02, least + 0.02 + (0.01 / periods));
        Assert.InRange(shares.Max(), most - 0.02 - (0.01 / periods), most + 0.02);
        Assert.InRange(mean, least - 1e-9, most + 1e-9);
    },
    iter: Samples.Of(40));

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<RefusalException>(() => Crank with { TurnTime = default });
        Assert.Throws<RefusalException>(() => Crank with { Fill = 1.1 });
        Assert.Throws<RefusalException>(() => Crank with { Spokes = 0 });
        Assert.Throws<RefusalException>(() => Crank.SpokeShare(default));
    }

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
