using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>What is guessed behind a region, worked on paper for grounds of few tones; by logarithms, as the eye takes light.</summary>
public class EdgeFillTests
{
    // Edges are read a little beyond the region, so an even slope is drawn out by some hundredths but is right in the middle.
    [Fact]
    public void A_ground_that_rises_evenly_is_found_behind_a_figure()
    {
        static double Ground(double x, double y) => Math.Exp(((x - 19.5) / 40) + ((y - 14.5) / 30));
        var fill = Fill((column, row) => column is > 20 and < 59 && row is > 15 and < 44 ? 0.01 : Ground(column, row), 20, 15, 60, 45);
        Assert.Equal(Math.E, fill.At(0.5, 0.5), 0.005 * Math.E);
        for (var at = 0.05; at < 1; at += 0.1)
        {
            Assert.Equal(Math.Exp(at + 0.5), fill.At(at, 0.5), 0.02 * Math.Exp(at + 0.5));
            Assert.Equal(Math.Exp(at + 0.5), fill.At(0.5, at), 0.02 * Math.Exp(at + 0.5));
        }
    }

    // Three edges of 10 and one of 40, the one across from it beside the sheet: were it an edge of 10 or the others' mean, less light would stand there.
    [Theory]
    [InlineData(-10, 15, 30, 45, 0.02, 0.5)]
    [InlineData(50, 15, 90, 45, 0.98, 0.5)]
    [InlineData(20, -8, 60, 22, 0.5, 0.02)]
    [InlineData(20, 38, 60, 68, 0.5, 0.98)]
    public void An_edge_beside_the_sheet_is_like_the_one_across_from_it(double left, double top, double right, double bottom, double u, double v)
    {
        bool IsAcross(int column, int row) => (left < 0 && column >= right) || (right > Columns && column < left) || (top < 0 && row >= bottom) || (bottom > Rows && row < top);
        var fill = Fill((column, row) => IsAcross(column, row) ? 40 : 10, left, top, right, bottom);
        Assert.Equal(20, fill.At(u, v), 0.6);
    }

    // √(10·40) = 20 is the mean of the two that are seen.
    [Fact]
    public void Two_edges_beside_the_sheet_are_like_the_mean_of_the_others()
    {
        var upright = Fill((column, _) => column < 40 ? 10 : 40, 20, -8, 60, 68);
        var level = Fill((_, row) => row < 30 ? 10 : 40, -10, 15, 90, 45);
        foreach (var along in new[] { 0.2, 0.5, 0.8 })
        {
            // Between √(10·20) at the dark end and √(40·20) at the other.
            var mixed = Math.Sqrt(20 * 10 * Math.Pow(4, along));
            Assert.Equal(mixed, upright.At(along, 0.5), 0.04 * mixed);
            Assert.Equal(mixed, level.At(0.5, along), 0.04 * mixed);
            Assert.Equal(mixed, upright.At(along, 0.01), 0.04 * mixed);
            Assert.Equal(mixed, level.At(0.99, along), 0.04 * mixed);
        }
    }

    // Both seen edges are 10 above and 40 below; of their 128 points 26 lie beside the sheet and count as 25, the mean of the others.
    [Fact]
    public void The_mean_is_that_of_all_that_is_seen_of_an_edge()
    {
        var fill = Fill((_, row) => row < 30 ? 10 : 40, 20, -8, 60, 68);
        var mean = Math.Exp(((26 * Math.Log(25)) + (102 * Math.Log(20))) / 128);
        Assert.Equal(Math.Sqrt(mean) * 10 / Math.Sqrt(25), fill.At(0.5, 0.25), 0.3);
    }

    [Fact]
    public void Partly_seen_edges_make_no_hole()
    {
        var fill = Fill((_, _) => 5, -10, -8, 30, 22);
        for (var at = 0.0; at <= 1; at += 0.1)
        {
            Assert.Equal(5, fill.At(at, 1 - at), 1e-3);
            Assert.Equal(5, fill.At(at, at), 1e-3);
        }
    }

    [Fact]
    public void Behind_what_fills_the_sheet_nothing_can_be_guessed()
    {
        var place = Place(-10, -8, 90, 68);
        var image = Image((_, _) => 5);
        Assert.Null(EdgeFill.Around(Region(image, place)));
        var refusal = Assert.Throws<RefusalException>(() => MotionOnSheet.Of(image, [new MovingRegion("barge", place, new GoesAway())]));
        Assert.Contains("barge", refusal.Message, StringComparison.Ordinal);
    }

    private static EdgeFill Fill(Func<int, int, double> light, double left, double top, double right, double bottom)
        => EdgeFill.Around(Region(Image(light), Place(left, top, right, bottom)))!;
}
