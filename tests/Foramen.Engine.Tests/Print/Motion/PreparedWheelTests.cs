using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using static Foramen.Engine.Tests.Print.Motion.MotionScene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>A wheel of 40 pixels about the sheet's middle.</summary>
public class PreparedWheelTests
{
    private static readonly MotionCourse All = MotionCourse.Between(S(10), 0, 1);

    // One half of it 1 and the other 9: every ring's mean is 5. Beyond the rim everything stays.
    [Fact]
    public void After_whole_turns_it_is_even_up_to_its_rim_and_nothing_beyond_changes()
    {
        var still = Image(RightHalf);
        var turned = Turned(still, 1, All);
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var radius = double.Hypot(column - 39.5, row - 29.5);
                if (radius is > 3 and < 19.4)
                {
                    Assert.Equal(5, turned.LightAt(column, row), 0.15);
                }
                else if (radius > 20.6)
                {
                    Assert.Equal(still.Lux[(row * Columns) + column], turned.Lux[(row * Columns) + column]);
                }
            }
        }
    }

    // Rings about the hub look the same however they turn.
    [Fact]
    public void Rings_about_its_hub_do_not_change()
    {
        var still = Image((column, row) => 1 + double.Hypot(column - 39.5, row - 29.5));
        var turned = Turned(still, 7, All);
        foreach (var (column, row) in Disc(2, 19.3))
        {
            Assert.Equal(still.LightAt(column, row), turned.LightAt(column, row), 0.25);
        }
    }

    // An even slope tells each place from every other.
    [Fact]
    public void Hardly_turned_it_is_as_it_was()
    {
        var still = Image((column, row) => column + (row / 2.0));
        var turned = Turned(still, 1e7, All);
        foreach (var (column, row) in Disc(1, 19.4))
        {
            Assert.Equal(still.LightAt(column, row), turned.LightAt(column, row), 0.15);
        }
    }

    // A quarter turn in the dark brings what was right to the bottom, or to the top; then it turns on to the left for the same light.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Turned_in_the_dark_it_shows_where_it_has_come_to(bool clockwise)
    {
        var turned = Turned(Image(RightHalf), 40, MotionCourse.Of([new(S(10), 0, true), new(S(60), 1, false)]), clockwise);
        foreach (var (column, row) in Disc(4, 19))
        {
            if (row is < 28 or > 31)
            {
                Assert.Equal(row > 30 == clockwise ? 9 : 1, turned.LightAt(column, row), 0.1);
            }
        }
    }

    // The bright half's middle goes from the right to the bottom: what lies between has it all the time, across from there never, at the sides half of the time.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_a_quarter_turn_each_place_sees_what_goes_past_it(bool clockwise)
    {
        var turned = Turned(Image(RightHalf), 40, All, clockwise);
        var (bottom, top) = clockwise ? (40, 19) : (19, 40);
        Assert.Equal(9, turned.LightAt(50, bottom), 0.1);
        Assert.Equal(5, turned.LightAt(50, top), 0.3);
        Assert.Equal(5, turned.LightAt(29, bottom), 0.3);
        Assert.Equal(1, turned.LightAt(29, top), 0.1);
    }

    // Two tones in equal parts on every ring; a paper that fails changes nothing of what stands.
    [Theory]
    [InlineData(1)]
    [InlineData(1 / 1.5)]
    public void Standing_it_is_told_by_its_tones_and_after_whole_turns_by_none(double schwarzschild)
    {
        var motion = MotionOnSheet.Of(Image((column, row) => 0.05 * RightHalf(column, row)), [new("it", Place(20, 10, 60, 50), new WheelTurns { TurnTime = S(10) })]);
        var response = StraightCurve.Response(2, schwarzschild);
        RegionTrace Trace(double from) => motion.Traces([MotionCourse.Between(S(10), from, 1)], response, For(10), FlashSetup.None)[0];
        Assert.Equal(2 * Math.Log10(9), Trace(1).Still, 0.1);
        Assert.Equal(Trace(1).Still, Trace(1).Moved, 0.1);
        Assert.Equal(MotionVerdict.Vanishes, Trace(0).Verdict);
    }

    private static double RightHalf(int column, int row) => column < 40 ? 1 : 9;

    private static SheetImage Turned(SheetImage still, double turn, MotionCourse course, bool clockwise = true)
        => MotionOnSheet.Of(still, [new("it", Place(20, 10, 60, 50), new WheelTurns { TurnTime = S(turn), Clockwise = clockwise })])
            .Expose([course], StraightCurve.Response(2, 1), course.Exposure);

    private static IEnumerable<(int Column, int Row)> Disc(double least, double most)
        => from row in Enumerable.Range(0, Rows)
           from column in Enumerable.Range(0, Columns)
           let radius = double.Hypot(column - 39.5, row - 29.5)
           where radius >= least && radius <= most
           select (column, row);
}
