using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using MathNet.Numerics;
using static Foramen.Engine.Tests.Print.Motion.MotionScene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>Stripes of ten pixels that sway or flow, against what calculus leaves of a wave.</summary>
public class PreparedBlurTests
{
    // A cosine averaged over a sine's swing is left at J₀ of 2π·reach/period (Bessel's integral, any handbook of functions); reading over a pixel's width takes little.
    [Theory]
    [InlineData(0.05, true)]
    [InlineData(0.05, false)]
    [InlineData(0.1, true)]
    [InlineData(0.1, false)]
    public void A_wave_that_sways_is_left_at_Bessels_function_of_its_reach(double reach, bool upright)
        => Assert.Equal(SpecialFunctions.BesselJ(0, 2 * Math.PI * reach * 40 / 10), Left(new SwaysInPlace { ReachOfWidth = reach, Period = S(2) }, 10, upright), 0.05);

    // In a tenth of a swing it goes sin(π/10) of its reach to each side, nearly evenly: a wave is left at sin x/x.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_part_of_a_swing_draws_out_a_part_of_the_reach(bool upright)
    {
        var half = 2 * Math.PI * 4 * Math.Sin(Math.PI / 10) / 10;
        Assert.Equal(Math.Sin(half) / half, Left(new SwaysInPlace { ReachOfWidth = 0.1, Period = S(2) }, 0.2, upright), 0.05);
    }

    // Five pixels are half of a wave: sin(π/2)/(π/2). Across the region's 40 columns an eighth of it, down its 30 rows a sixth.
    [Theory]
    [InlineData(40, true)]
    [InlineData(30, false)]
    public void A_wave_that_flows_by_half_its_length_is_left_at_two_over_pi(double crossing, bool upright)
        => Assert.Equal(2 / Math.PI, Left(new FlowsThrough { Crossing = S(crossing), Upright = !upright }, 5, upright), 0.03);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Along_its_stripes_a_flow_changes_nothing(bool upright)
        => Assert.Equal(1, Left(new FlowsThrough { Crossing = S(3), Upright = upright }, 5, upright), 0.03);

    // Half a crossing of a ramp that is mirrored at its ends: near the left one, u from it, the mean of |t| from u − 1/4 to u + 1/4.
    [Fact]
    public void At_its_ends_more_of_the_same_kind_follows()
    {
        var ramp = Image((column, _) => column - 19.5);
        var flowed = Exposed(ramp, new FlowsThrough { Crossing = S(20) }, MotionCourse.Between(S(10), 0, 1));
        foreach (var column in new[] { 23, 25, 28 })
        {
            var u = (column - 19.5) / 40;
            var mean = 40 * (Math.Pow(u + 0.25, 2) + Math.Pow(0.25 - u, 2));
            Assert.Equal(mean, flowed.LightAt(column, 30), 0.5);
        }
    }

    // Light that falls while it stands keeps its wave.
    [Fact]
    public void What_stands_for_half_of_the_light_keeps_half_of_its_wave()
        => Assert.Equal(0.5, Contrast(Exposed(Stripes(true), new FlowsThrough { Crossing = S(5) }, MotionCourse.Between(S(10), 0.5, 1)), true), 0.03);

    // After whole crossings a row is even: 5 everywhere. A pixel at the edge is only on the way there, on all four sides.
    [Fact]
    public void Towards_its_edges_it_passes_over_into_what_is_around()
    {
        var still = Image((column, _) => Tone(column));
        var flowed = Exposed(still, new FlowsThrough { Crossing = S(5) }, MotionCourse.Between(S(10), 0, 1));
        double Part(int column, int row) => (flowed.LightAt(column, row) - still.LightAt(column, row)) / (5 - still.LightAt(column, row));
        foreach (var (column, row) in new[] { (20, 30), (59, 30), (37, 15), (37, 44), (20, 15), (59, 44) })
        {
            Assert.InRange(Part(column, row), 0.1, 0.7);
        }

        foreach (var (column, row) in new[] { (23, 30), (56, 30), (37, 18), (37, 41), (37, 30) })
        {
            Assert.Equal(1, Part(column, row), 0.05);
        }

        foreach (var (column, row) in new[] { (19, 30), (60, 30), (37, 14), (37, 45) })
        {
            Assert.Equal(0, Part(column, row), 1e-5);
        }
    }

    // The straight curve's slope of 2: two tones a factor 9 apart lie 2·lg 9 in density apart.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Standing_it_is_told_by_its_tones_along_its_way(bool upright)
    {
        var response = StraightCurve.Response(2, 1);
        var image = Image((column, row) => 0.01 * Tone(upright ? row : column));
        FlowsThrough motion = new() { Crossing = S(5), Upright = upright };
        var across = new FlowsThrough { Crossing = S(3), Upright = !upright };
        RegionTrace Trace(FlowsThrough way, double from) => MotionOnSheet.Of(image, [new("it", Place(20, 15, 60, 45), way)])
            .Traces([MotionCourse.Between(S(10), from, 1)], response, For(10), FlashSetup.None)[0];
        Assert.Equal(2 * Math.Log10(9), Trace(motion, 1).Still, 0.15);
        Assert.Equal(0, Trace(across, 1).Still, 0.02);
        Assert.Equal(Trace(motion, 1).Still, Trace(motion, 1).Moved, 1e-3);
        Assert.Equal(0, Trace(motion, 0).Moved, 0.05);
    }

    [Fact]
    public void Standing_it_keeps_its_whole_trace_on_a_paper_that_fails()
    {
        var trace = MotionOnSheet.Of(Image((column, _) => 0.05 * Tone(column)), [new("it", Place(20, 15, 60, 45), new FlowsThrough { Crossing = S(20) })])
            .Traces([MotionCourse.Between(S(10), 1, 1)], StraightCurve.Response(2, 1 / 1.5), For(10), FlashSetup.None)[0];
        Assert.Equal(2 * Math.Log10(9), trace.Still, 0.15);
        Assert.Equal(trace.Still, trace.Moved, 1e-3);
    }

    // Stripes in the upper half alone are half of the mean square.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void All_of_its_lines_are_looked_at(bool upright)
    {
        var image = Image((column, row) => upright ? 0.01 * (column < 40 ? Tone(row) : 5) : 0.01 * (row < 30 ? Tone(column) : 5));
        var trace = MotionOnSheet.Of(image, [new("it", Place(20, 15, 60, 45), new FlowsThrough { Crossing = S(3), Upright = upright })])
            .Traces([MotionCourse.Between(S(10), 1, 1)], StraightCurve.Response(2, 1), For(10), FlashSetup.None)[0];
        Assert.Equal(2 * Math.Log10(9) / Math.Sqrt(2), trace.Still, 0.12);
    }

    [Fact]
    public void Rows_beside_the_sheet_do_not_count_in_its_trace()
    {
        var trace = MotionOnSheet.Of(Image((column, _) => 0.01 * Tone(column)), [new("it", Place(20, -8, 60, 22), new FlowsThrough { Crossing = S(3) })])
            .Traces([MotionCourse.Between(S(10), 1, 1)], StraightCurve.Response(2, 1), For(10), FlashSetup.None)[0];
        Assert.Equal(2 * Math.Log10(9), trace.Still, 0.15);
    }

    private static double Tone(int place) => place % 10 < 5 ? 1 : 9;

    private static SheetImage Stripes(bool upright) => Image((column, row) => 2 + Math.Cos(2 * Math.PI * (upright ? column : row) / 10));

    private static SheetImage Exposed(SheetImage still, RegionMotion motion, MotionCourse course)
        => MotionOnSheet.Of(still, [new("it", Place(20, 15, 60, 45), motion)]).Expose([course], StraightCurve.Response(2, 1), course.Exposure);

    private static double Left(RegionMotion motion, double seconds, bool upright)
        => Contrast(Exposed(Stripes(upright), motion, MotionCourse.Between(S(seconds), 0, 1)), upright);

    // The cosine's part in one wave about the middle.
    private static double Contrast(SheetImage image, bool upright)
        => Enumerable.Range(upright ? 35 : 25, 10).Sum(at => Math.Cos(2 * Math.PI * at / 10) * (upright ? image.LightAt(at, 30) : image.LightAt(40, at))) / 5;
}
