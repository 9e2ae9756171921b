using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using static Foramen.Engine.Tests.Print.Motion.MotionScene;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>Moving regions against what they stand for: the mean of many stills, each made by the whole camera.</summary>
public class MotionOnSheetTests
{
    private static readonly PaperResponse Plain = StraightCurve.Response(2, 1);
    private static readonly PointSpread Spot = PointSpread.Of(Straight.Camera, PaperLight.Monochromatic(450));

    [Theory]
    [InlineData(20, true)]
    [InlineData(75, true)]
    [InlineData(75, false)]
    [InlineData(400, false)]
    public void A_turning_wheel_is_the_mean_of_its_stills(double degrees, bool clockwise)
    {
        var exposure = 120.0;
        var turning = new WheelTurns { TurnTime = S(exposure * 360 / degrees), Clockwise = clockwise };
        var moved = Moved(Image(Wheel(0), Spot), Plain, exposure, Moving(turning, MotionCourse.Between(S(exposure), 0, 1))).Image;
        const int Stills = 60;
        var mean = new double[moved.Lux.Length];
        for (var i = 0; i < Stills; i++)
        {
            var still = Image(Wheel((clockwise ? 1 : -1) * degrees * (i + 0.5) / Stills), Spot);
            for (var pixel = 0; pixel < mean.Length; pixel++)
            {
                mean[pixel] += still.Lux[pixel] / Stills;
            }
        }

        // A fiftieth of the light for what sampling rounds; the pattern itself swings by half.
        Assert.All(Inside(moved), pixel => Assert.Equal(mean[pixel], moved.Lux[pixel], 0.02 * mean[pixel]));
    }

    // Long lights that take turns add as ∫ dt/T(I): for I·t^p the mean is (Σ w·I^(1/p))^p.
    [Fact]
    [Source("schwarzschild-1900", "with additive progress", Basis.Worked)]
    public void On_a_paper_that_fails_a_slow_wheel_is_the_power_mean_of_its_stills()
    {
        const double P = 0.8;
        var response = StraightCurve.Response(2, P);
        var moved = Moved(Image(Wheel(0), Spot), response, 120, Moving(new WheelTurns { TurnTime = S(600) }, MotionCourse.Between(S(120), 0, 1))).Image;
        const int Stills = 60;
        var sum = new double[moved.Lux.Length];
        for (var i = 0; i < Stills; i++)
        {
            var still = Image(Wheel(72 * (i + 0.5) / Stills), Spot);
            for (var pixel = 0; pixel < sum.Length; pixel++)
            {
                sum[pixel] += Math.Pow(still.Lux[pixel], 1 / P) / Stills;
            }
        }

        Assert.All(Inside(moved), pixel => Assert.Equal(Math.Pow(sum[pixel], P), moved.Lux[pixel], 0.02 * moved.Lux[pixel]));
    }

    // Six turns: every ring is even, and its light is the mean of spokes and gaps; the falloff stays where it was.
    [Fact]
    [Source("additive-exposure", Basis.Worked)]
    public void After_whole_turns_the_wheel_is_an_even_disc_of_its_mean()
    {
        var result = Moved(Image(Wheel(0)), Plain, 120, Moving(new WheelTurns { TurnTime = S(20) }, MotionCourse.Between(S(120), 0, 1)));
        var even = Image(Map((_, _) => 2000));
        Assert.All(Inside(result.Image), pixel => Assert.Equal(even.Lux[pixel], result.Image.Lux[pixel], 0.01 * even.Lux[pixel]));
        Assert.Equal(MotionVerdict.Vanishes, result.Traces[0].Verdict);
        Assert.True(result.Traces[0].Still > 0.3);
    }

    // Half of the light falls while it stands: half of the stills' pattern is left.
    [Fact]
    [Source("additive-exposure", Basis.Worked)]
    public void A_wheel_that_starts_at_half_time_is_half_a_disc_and_half_a_still()
    {
        var still = Image(Wheel(0));
        var even = Image(Map((_, _) => 2000));
        var result = Moved(still, Plain, 120, Moving(new WheelTurns { TurnTime = S(20) }, MotionCourse.Between(S(120), 0.5, 1)));
        Assert.All(
            Inside(result.Image),
            pixel => Assert.Equal((still.Lux[pixel] + even.Lux[pixel]) / 2, result.Image.Lux[pixel], 0.01 * even.Lux[pixel]));
        Assert.Equal(MotionVerdict.Ghost, result.Traces[0].Verdict);
    }

    [Fact]
    public void While_the_hole_is_covered_it_turns_on_without_light()
    {
        // A twelfth of a turn in the dark brings spokes where gaps were.
        var course = MotionCourse.Of([new(S(60), 1, false), new(S(10), 0, true), new(S(60), 1, false)]);
        var result = Moved(Image(Wheel(0)), Plain, 120, Moving(new WheelTurns { TurnTime = S(120) }, course));
        var (first, second) = (Image(Wheel(0)), Image(Wheel(30)));
        Assert.All(
            Inside(result.Image),
            pixel => Assert.Equal((first.Lux[pixel] + second.Lux[pixel]) / 2, result.Image.Lux[pixel], 0.015 * first.Lux[pixel]));
    }

    [Fact]
    public void A_turn_so_slow_that_nothing_moves_leaves_the_wheel_standing()
    {
        var still = Image(Wheel(0));
        var result = Moved(still, Plain, 120, Moving(new WheelTurns { TurnTime = S(1e6) }, MotionCourse.Between(S(120), 0, 1)));
        Assert.Equal(MotionVerdict.Stays, result.Traces[0].Verdict);

        // Beyond the hub, where six spokes are wider than a few pixels.
        Assert.All(Inside(result.Image, 0.4), pixel => Assert.Equal(still.Lux[pixel], result.Image.Lux[pixel], 0.02 * still.Lux[pixel]));
    }

    [Fact]
    public void What_never_moves_changes_no_pixel() => Gen.Int[0, 3].Sample(
        kind =>
        {
            RegionMotion motion = kind switch
            {
                0 => new WheelTurns { TurnTime = S(3) },
                1 => new SwaysInPlace { ReachOfWidth = 0.2, Period = S(2) },
                2 => new FlowsThrough { Crossing = S(9) },
                _ => new GoesAway(),
            };
            var still = Image(Wheel(0));
            var result = Moved(still, Plain, 120, Moving(motion, MotionCourse.Between(S(120), 1, 1)));
            Assert.True(still.Lux.SequenceEqual(result.Image.Lux));
            Assert.Equal(MotionVerdict.Stays, result.Traces[0].Verdict);
        },
        iter: Samples.Of(4));

    // The cyclist of the demo: 0.0034 of two minutes; the picture's trace is the trace of one background tone.
    [Theory]
    [InlineData(1)]
    [InlineData(50)]
    public void What_passes_leaves_the_trace_that_a_tone_is_told(int number)
    {
        var passers = new Passers
        {
            Width = Length.FromMetres(1.7), Speed = MotionSpeed.FromKilometresPerHour(15), Distance = Length.FromMetres(20), LuminanceRatio = 0.1, Number = number,
        };
        var still = Image(Map((_, _) => 1000));
        var result = Moved(still, Plain, 120, Moving(new PassesThrough(passers), MotionCourse.Between(S(120), 0, 1)));
        var middle = ((still.Grid.Height / 2) * still.Grid.Width) + (still.Grid.Width / 2);
        var told = new MotionOnPaper(Plain, Illuminance.FromLux(still.Lux[middle]), For(120), FlashSetup.None).Trace(passers.During(S(120)));
        Assert.Equal(Math.Abs(told.Change), result.Traces[0].Moved, 2e-4 + (0.01 * Math.Abs(told.Change)));
        Assert.Equal(told.Verdict, result.Traces[0].Verdict);
        Assert.Equal(still.Lux[middle] * (1 - (0.9 * number * 0.408 / 120)), result.Image.Lux[middle], 1e-3 * still.Lux[middle]);
    }

    [Fact]
    public void What_stands_still_before_the_background_stays()
    {
        var passers = new Passers { Width = Length.FromMetres(1), Speed = default, Distance = Length.FromMetres(9), LuminanceRatio = 0.25 };
        var result = Moved(Image(Map((_, _) => 1000)), Plain, 120, Moving(new PassesThrough(passers), MotionCourse.Between(S(120), 0, 1)));
        Assert.Equal(MotionVerdict.Stays, result.Traces[0].Verdict);
    }

    // On a background that rises evenly across and down (in its logarithm) the guess from the edges is the background.
    [Theory]
    [InlineData(0, 1, MotionVerdict.Vanishes)]
    [InlineData(0.5, 0.5, MotionVerdict.Ghost)]
    public void What_goes_away_leaves_what_is_around(double from, double share, MotionVerdict verdict)
    {
        static double Ground(double x, double y) => 1000 * Math.Exp(x + (0.5 * y));
        var with = Image(Map((x, y) => Math.Abs(x - 0.5) < 0.14 && Math.Abs(y - 0.5) < 0.19 ? 150 : Ground(x, y)));
        var bare = Image(Map(Ground));
        var result = Moved(with, Plain, 120, Moving(new GoesAway(), MotionCourse.Between(S(120), from, 1)));
        Assert.All(
            Inside(with, 0, 0.6),
            pixel => Assert.Equal((share * bare.Lux[pixel]) + ((1 - share) * with.Lux[pixel]), result.Image.Lux[pixel], 0.02 * bare.Lux[pixel]));
        Assert.Equal(verdict, result.Traces[0].Verdict);
    }

    [Fact]
    public void Swaying_and_flowing_keep_light_and_take_detail()
    {
        // Fine upright stripes: 24 of them across the region.
        var still = Image(Map((x, _) => 1000 * (2 + Math.Cos(2 * Math.PI * x / 0.0125))));
        foreach (RegionMotion motion in new RegionMotion[] { new SwaysInPlace { ReachOfWidth = 0.1, Period = S(2) }, new FlowsThrough { Crossing = S(30) } })
        {
            var result = Moved(still, Plain, 120, Moving(motion, MotionCourse.Between(S(120), 0, 1)));
            Assert.True(result.Traces[0].Moved < 0.35 * result.Traces[0].Still);
            var inside = Inside(still, 0, 0.7).ToList();
            Assert.Equal(inside.Average(pixel => still.Lux[pixel]), inside.Average(pixel => result.Image.Lux[pixel]), 0.02 * inside.Average(pixel => still.Lux[pixel]));
        }

        // Along wider stripes nothing changes.
        still = Image(Map((x, _) => 1000 * (2 + Math.Cos(2 * Math.PI * x / 0.06))));
        var falling = Moved(still, Plain, 120, Moving(new FlowsThrough { Crossing = S(30), Upright = true }, MotionCourse.Between(S(120), 0, 1)));
        Assert.All(Inside(still, 0, 0.7), pixel => Assert.Equal(still.Lux[pixel], falling.Image.Lux[pixel], 0.03 * still.Lux[pixel]));
    }

    // A lamp of 40 cd at 8 m, walked through at 1.2 m/s: the line's middle has the light that a tone is told.
    [Fact]
    [Source("lighting-textbook", "distance law", Basis.Worked)]
    public void A_lamp_draws_a_line_of_the_light_that_a_tone_is_told()
    {
        var lamp = new PassingLamp { Intensity = LuminousIntensity.FromCandelas(400), Distance = Length.FromMetres(8), Speed = MotionSpeed.FromMetresPerSecond(1.2) };
        var spot = Length.FromMillimetres(1.5);
        var still = Image(Map((_, _) => 0.3));
        var result = Moved(still, Plain, 120, spot, Moving(new LampPasses(lamp), MotionCourse.Between(S(120), 0, 1)));
        var row = still.Grid.Height / 2;
        var middle = (row * still.Grid.Width) + (still.Grid.Width / 2);
        var camera = Straight.Camera;
        var told = new MotionOnPaper(Plain, Illuminance.FromLux(still.Lux[middle]), For(120), FlashSetup.None)
            .Trace(lamp, camera.Hole.Diameter, spot, camera.FocalDistance);
        Assert.Equal(Math.Abs(told.Change), result.Traces[0].Moved, 0.02);
        Assert.True(result.Image.Lux[middle] > still.Lux[middle]);
        var besides = middle + (6 * still.Grid.Width);
        Assert.Equal(still.Lux[besides], result.Image.Lux[besides]);
    }

    [Fact]
    public void A_region_outside_the_frame_is_refused_by_name()
    {
        var narrow = SheetProjection.Of(CameraExamples(120), PhotographField.FromHorizontalAngle(Width, Height, Angle.FromDegrees(90)), SheetFormat.Level);
        var image = SheetImage.Make(Wheel(0), narrow, 200, null, null, TestContext.Current.CancellationToken);
        var corner = RectangleInPhotograph.FromFractions(0, 0, 0.1, 0.1);
        var refusal = Assert.Throws<RefusalException>(
            () => Moved(image, Plain, 120, Moving(new WheelTurns { TurnTime = S(20) }, MotionCourse.Between(S(120), 0, 1), corner)));
        Assert.Contains("\"the wheel\" lies outside the frame", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wheel_across_the_sheets_edge_is_drawn_as_far_as_it_is_seen()
    {
        var aside = SheetProjection.Of(
            Straight.Camera, PhotographField.FromHorizontalAngle(Width, Height, Angle.FromDegrees(90)), SheetFormat.Level, SheetAim.FromAngles(Angle.FromDegrees(40)));
        var image = SheetImage.Make(Wheel(0), aside, 320, null, null, TestContext.Current.CancellationToken);
        var result = Moved(image, Plain, 120, Moving(new WheelTurns { TurnTime = S(20) }, MotionCourse.Between(S(120), 0, 1)));
        Assert.Equal(MotionVerdict.Vanishes, result.Traces[0].Verdict);
        Assert.DoesNotContain(float.NaN, result.Image.Lux.ToArray());
    }

    [Fact]
    public void Exposed_again_for_another_time_it_is_as_if_made_anew() => Gen.Select(Gen.Double[5, 600], Gen.Double[5, 600]).Sample(
        (first, second) =>
        {
            MovingRegion[] regions =
            [
                new("wheel", Middle, new WheelTurns { TurnTime = S(70) }),
                new("leaves", RectangleInPhotograph.FromFractions(0.1, 0.1, 0.2, 0.2), new SwaysInPlace { ReachOfWidth = 0.1, Period = S(4) }),
                new("clouds", RectangleInPhotograph.FromFractions(0.7, 0.1, 0.2, 0.2), new FlowsThrough { Crossing = S(200) }),
                new("walker", RectangleInPhotograph.FromFractions(0.45, 0.4, 0.3, 0.1), new GoesAway()),
            ];
            MotionCourse[] Courses(double seconds) => [.. regions.Select((_, i) => MotionCourse.Between(S(seconds), 0.2 * i, 1))];
            var response = StraightCurve.Response(2, 0.85);
            var still = Image(Wheel(0));
            var kept = MotionOnSheet.Of(still, regions);
            _ = kept.Expose(Courses(first), response, S(first));
            Assert.True(kept.Expose(Courses(second), response, S(second)).Lux.SequenceEqual(MotionOnSheet.Of(still, regions).Expose(Courses(second), response, S(second)).Lux));
        },
        iter: Samples.Of(20));

    // The walker stands before the wheel: the wheel turns, and what is gone for half of the time lets half of it through.
    [Fact]
    public void What_goes_away_before_a_wheel_acts_on_what_the_wheel_leaves()
    {
        var passers = new PassesThrough(new Passers { Width = Length.FromMetres(1), Speed = MotionSpeed.FromMetresPerSecond(0.1), Distance = Length.FromMetres(9), LuminanceRatio = 0, Number = 6 });
        var wheel = Moving(new WheelTurns { TurnTime = S(20) }, MotionCourse.Between(S(120), 0, 1));
        var turned = Moved(Image(Wheel(0)), Plain, 120, wheel).Image;
        foreach (var order in new[] { new[] { wheel, Moving(passers, wheel.Course) }, [Moving(passers, wheel.Course), wheel] })
        {
            var both = Moved(Image(Wheel(0)), Plain, 120, order).Image;
            Assert.All(Inside(both, 0.3, 0.8), pixel => Assert.Equal(turned.Lux[pixel] / 2, both.Lux[pixel], 1e-4 * turned.Lux[pixel]));
        }
    }

    [Fact]
    public void The_law_near_a_time_is_Schwarzschilds_power()
    {
        Assert.Equal(1 / 0.8, SchwarzschildFailure.FromExponent(0.8).ExponentNear(90), 1e-6);
        Assert.Equal(1, SchwarzschildFailure.FromExponent(1).ExponentNear(90), 1e-9);
    }

    private static PinholeCamera CameraExamples(double focal) => Camera.CameraExamples.Flat(0.35, focal, 127, 102);
}
