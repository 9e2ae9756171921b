using CsCheck;
using Foramen.Engine.Print;
using MathNet.Numerics.Statistics;

namespace Foramen.Engine.Tests.Print.Scan;

public class DensityPlaneTests
{
    [Fact]
    public void A_coarser_grid_holds_the_means_of_what_is_known()
    {
        var nan = float.NaN;
        var plane = new DensityPlane(4, 4, [
            1, 3, nan, nan,
            5, nan, nan, nan,
            0, 1, 2, 2,
            1, 2, 2, 4]);
        var reduced = plane.Reduced(2, 2);
        Assert.Equal((2, 2), (reduced.Width, reduced.Height));
        Assert.Equal([3, nan], reduced.Row(0));
        Assert.Equal([1, 2.5f], reduced.Row(1));
    }

    // A grid that does not divide. Across, a cell is four thirds of a pixel wide: the first holds all of pixel 0 and a third of pixel 1. Down, it is seven thirds high: rows 0, 1 and a third of row 2.
    [Fact]
    public void A_pixel_on_a_border_counts_on_each_side_with_what_lies_there()
    {
        var plane = new DensityPlane(4, 7, [.. Enumerable.Range(0, 28).Select(i => (i % 4) + (100f * (i / 4)))]);
        var reduced = plane.Reduced(3, 3);
        double[] across = [1 / 3.0 / (4 / 3.0), 1.5, ((2 / 3.0) + 3) / (4 / 3.0)];
        double[] down = [100 * (1 + (2 / 3.0)) / (7 / 3.0), 300, 100 * ((4 / 3.0) + 5 + 6) / (7 / 3.0)];
        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
            {
                Assert.Equal(across[column] + down[row], reduced.At(column, row), 1e-3);
            }
        }
    }

    // What lies at a place lies there on the coarser grid too, on the whole: a picture must not move when it is made smaller.
    [Fact]
    public void A_coarser_grid_does_not_move_the_picture() => Gen.Select(Gen.Int[40, 300], Gen.Double[0.3, 0.95]).Sample((width, part) =>
    {
        var columns = (int)(width * part);
        var places = new DensityPlane(width, width, [.. Enumerable.Range(0, width * width).Select(i => ((i % width) + 0.5f) / width)]).Reduced(columns, columns);
        Assert.Equal(0, Enumerable.Range(0, columns).Average(column => places.At(column, 0) - ((column + 0.5) / columns)), 1e-5);
        var rows = new DensityPlane(width, width, [.. Enumerable.Range(0, width * width).Select(i => ((i / width) + 0.5f) / width)]).Reduced(columns, columns);
        Assert.Equal(0, Enumerable.Range(0, columns).Average(row => rows.At(0, row) - ((row + 0.5) / columns)), 1e-5);
    }, iter: Samples.Of(20));

    // Pearson's coefficient by MathNet, of the pairs that lie inside both rims, gathered one by one.
    [Fact]
    public void The_likeness_is_the_correlation_where_both_are_known_inside_the_rim()
        => Gen.Select(Gen.Int[1, 1000], Gen.Int[0, 2], Gen.Int[-3, 3], Gen.Int[-3, 3]).Sample((seed, rim, right, down) =>
        {
            const int Width = 15, Height = 12;
            var chance = new Random(seed);
            float Any() => chance.Next(8) == 0 ? float.NaN : (float)(2 * chance.NextDouble());
            var (mine, other) = (Plane(Width, Height, Any), Plane(Width, Height, Any));
            bool IsInside(int column, int row) => column >= rim && row >= rim && column < Width - rim && row < Height - rim;
            var (a, b) = (new List<double>(), new List<double>());
            for (var i = 0; i < Width * Height; i++)
            {
                var (column, row) = (i % Width, i / Width);
                if (IsInside(column, row) && IsInside(column + right, row + down) && !float.IsNaN(mine.At(column, row)) && !float.IsNaN(other.At(column + right, row + down)))
                {
                    a.Add(mine.At(column, row));
                    b.Add(other.At(column + right, row + down));
                }
            }

            var likeness = mine.LikenessTo(other, rim, right, down);
            Assert.Equal(a.Count >= 0.3 * (Width - (2 * rim)) * (Height - (2 * rim)), likeness is not null);
            if (likeness is { } known)
            {
                Assert.Equal(Correlation.Pearson(a, b), known, 1e-6);
            }
        });

    [Theory]
    [InlineData(7, true)]
    [InlineData(-7, true)]
    [InlineData(8, false)]
    [InlineData(-8, false)]
    [InlineData(30, false)]
    public void Less_than_three_tenths_say_nothing(int shift, bool says)
    {
        var chance = new Random(1);
        var plane = Plane(10, 10, () => chance.NextSingle());
        Assert.Equal(says, plane.LikenessTo(plane, 0, shift, 0) is not null);
        Assert.Equal(says, plane.LikenessTo(plane, 0, 0, shift) is not null);
    }

    // A sheet of one tone is like everything and nothing: less than a thousandth of density as a standard deviation is no picture.
    [Theory]
    [InlineData(0.0005, false)]
    [InlineData(0.002, true)]
    public void One_tone_says_nothing(double deviation, bool says)
    {
        var (i, j) = (0, 0);
        var faint = Plane(10, 10, () => (float)(1 + (i++ % 2 == 0 ? deviation : -deviation)));
        var strong = Plane(10, 10, () => 1 + (j++ % 2 == 0 ? 0.1f : -0.1f));
        Assert.Equal(says, faint.LikenessTo(strong, 0, 0, 0) is not null);
        Assert.Equal(says, strong.LikenessTo(faint, 0, 0, 0) is not null);
    }

    private static DensityPlane Plane(int width, int height, Func<float> value) => new(width, height, [.. Enumerable.Range(0, width * height).Select(_ => value())]);
}
