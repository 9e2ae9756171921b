using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using static Foramen.Engine.Tests.Print.Motion.MotionScene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>Regions of a small sheet on papers that fail by t^(1/1.5): two lights of 1 and 9 in turns are worth 5 when fast and ((1 + 27)/2)^(2/3) = 5.81 when slow.</summary>
public class MotionOnSmallSheetTests
{
    private const double Fast = 5;
    private static readonly double Slow = Math.Pow(14, 2 / 3.0);
    private static readonly RectangleInPhotograph Middle = Place(20, 15, 60, 45);

    // The emulsion cannot tell turns within a second; a wheel and a flow are taken to change eight times as fast as they turn or cross (an assumption of the code's).
    [Theory]
    [InlineData(7.9, true)]
    [InlineData(8, false)]
    public void A_wheel_is_fast_below_eight_seconds_a_turn(double turn, bool fast)
        => Check(fast, 0.2, MeanLight((column, _) => column < 40 ? 1 : 9, new WheelTurns { TurnTime = S(turn) }, 10 * turn, 0));

    [Theory]
    [InlineData(7.9, true)]
    [InlineData(8, false)]
    public void A_flow_is_fast_below_eight_seconds_a_crossing(double crossing, bool fast)
        => Check(fast, 0.2, MeanLight((column, _) => column % 10 < 5 ? 1 : 9, new FlowsThrough { Crossing = S(crossing) }, 10 * crossing, 0));

    [Theory]
    [InlineData(0.99, true)]
    [InlineData(1, false)]
    public void Swaying_is_fast_below_a_second_a_swing(double period, bool fast)
        => Check(fast, 0.25, MeanLight((column, _) => column % 10 < 5 ? 1 : 9, new SwaysInPlace { ReachOfWidth = 0.25, Period = S(period) }, 10, 0));

    [Theory]
    [InlineData(0.9, true)]
    [InlineData(1, false)]
    public void What_passes_is_fast_if_each_is_past_within_a_second(double dwell, bool fast)
    {
        var passers = new Passers
        {
            Width = Length.FromMetres(dwell), Speed = MotionSpeed.FromMetresPerSecond(1), Distance = Length.FromMetres(9), LuminanceRatio = 1 / 9.0, Number = 10,
        };
        Check(fast, 0.01, MeanLight((_, _) => 9, new PassesThrough(passers), 20 * dwell, 0));
    }

    [Theory]
    [InlineData(0.9, true)]
    [InlineData(1, false)]
    public void What_goes_away_is_fast_if_all_is_over_within_a_second(double seconds, bool fast)
    {
        var light = MeanLight((column, row) => column is >= 20 and < 60 && row is >= 15 and < 45 ? 9 : 1, new GoesAway(), seconds, 0.5);

        // About a second the paper only begins to fail, so that turns are worth something between.
        Assert.InRange(light, fast ? Fast - 0.01 : Fast + 0.2, fast ? Fast + 0.01 : Slow);
    }

    // What carries light comes first, in whichever order they are named; what goes away or passes acts on what it leaves.
    [Fact]
    public void The_order_in_which_regions_are_named_does_not_matter()
    {
        var passers = new Passers { Width = Length.FromMetres(1), Speed = MotionSpeed.FromMetresPerSecond(0.1), Distance = Length.FromMetres(9), LuminanceRatio = 0.1 };
        var lamp = new PassingLamp { Intensity = LuminousIntensity.FromCandelas(3200), Distance = Length.FromMetres(1), Speed = MotionSpeed.FromMetresPerSecond(0.014) };
        var still = Image((column, row) => (column % 10 < 5 ? 1 : 9) + (0.01 * row));
        foreach (RegionMotion carrying in new RegionMotion[] { new FlowsThrough { Crossing = S(17) }, new WheelTurns { TurnTime = S(31) } })
        {
            foreach (RegionMotion other in new RegionMotion[] { new PassesThrough(passers), new GoesAway(), new LampPasses(lamp) })
            {
                var (alone, first, last) = (Exposed(still, carrying), Exposed(still, other, carrying), Exposed(still, carrying, other));
                Assert.True(first.Lux.SequenceEqual(last.Lux));
                Assert.False(alone.Lux.SequenceEqual(last.Lux));
            }
        }
    }

    // On a straight curve of slope 2 through density 1.5 at one lux second the density is 1.5 + 2·lg of all light: image and flash add, and
    // only a flash through the hole falls off as the image does.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_trace_is_told_under_image_and_flash(bool throughHole)
    {
        var response = StraightCurve.Response(2, 1);
        var place = Place(60, 42, 78, 58);
        var image = Image((_, _) => 0.02);
        var falloff = (double)Region(image, place).FalloffInTheMiddle;
        var flash = throughHole ? FlashSetup.AtSurface(Illuminance.FromLux(0.1)) : FlashSetup.OpenSheet(Illuminance.FromLux(0.1));
        foreach (RegionMotion motion in new RegionMotion[] { new GoesAway(), new WheelTurns { TurnTime = S(7) }, new FlowsThrough { Crossing = S(9) } })
        {
            var trace = MotionOnSheet.Of(image, [new("it", place, motion)])
                .Traces([MotionCourse.Between(S(20), 0, 1)], response, new SheetExposure(S(20), S(3)), flash)[0];
            var light = response.ActinicFactor * ((0.02 * falloff * 20) + (0.1 * 3 * (throughHole ? falloff : 1)));
            Assert.Equal(1.5 + (2 * Math.Log10(light)), trace.Density.Value, 2e-3);
            Assert.Equal(MotionVerdict.Vanishes, trace.Verdict);
        }
    }

    [Fact]
    public void Under_a_mask_it_is_refused()
    {
        var mask = PrintMask.Create(MaskOutline.Ellipse(1), Length.FromMillimetres(20), MaskPlace.InTray(Length.FromMillimetres(5)));
        var masked = Image((_, _) => 1).Masked(mask, PaperKind.NegativeWorking);
        Assert.Throws<RefusalException>(() => MotionOnSheet.Of(masked, [new MovingRegion("it", Middle, new GoesAway())]));
    }

    private static void Check(bool fast, double within, double light) => Assert.Equal(fast ? Fast : Slow, light, within);

    // Over two waves of the stripes about the region's middle.
    private static double MeanLight(Func<int, int, double> light, RegionMotion motion, double seconds, double from)
    {
        var course = MotionCourse.Between(S(seconds), from, 1);
        var exposed = MotionOnSheet.Of(Image(light), [new("it", Middle, motion)]).Expose([course], StraightCurve.Response(2, 1 / 1.5), course.Exposure);
        return Enumerable.Range(30, 20).Average(column => exposed.LightAt(column, 25));
    }

    private static SheetImage Exposed(SheetImage still, params RegionMotion[] motions)
    {
        MotionCourse[] courses = [.. motions.Select(_ => MotionCourse.Between(S(10), 0.2, 1))];
        return MotionOnSheet.Of(still, [.. motions.Select(motion => new MovingRegion("it", Middle, motion))]).Expose(courses, StraightCurve.Response(2, 1), S(10));
    }
}
