using System.Runtime.Intrinsics;
using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print;

public sealed class MapReaderTests
{
    // Columns of 0, 10, 30 and rows that add 0, 1, 5: straight between pixels, by hand.
    private static readonly float[] Map = [0, 10, 30, 1, 11, 31, 5, 15, 35];

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(2, 2, 35)]
    [InlineData(0.5, 0, 5)]
    [InlineData(1.25, 0, 15)]
    [InlineData(0, 0.5, 0.5)]
    [InlineData(0, 1.25, 2)]
    [InlineData(1.5, 1.5, 23)]
    [InlineData(-0.5, -0.5, 0)]
    [InlineData(2.5, 2.5, 35)]
    [InlineData(-3, 9, 5)]
    public void Between_pixels_it_is_straight_and_beyond_them_the_edges_own(double x, double y, double value)
    {
        Assert.Equal(value, new MapReader(3, 3).Sample(Map, (float)x, (float)y), 1e-5);
        AssertFour(3, 3, Map, x, y, value);
    }

    [Theory]
    [InlineData(1, 1, 7.5, 7)]
    [InlineData(3, 1, 0.5, 8)]
    [InlineData(1, 3, 0.5, 8)]
    public void Maps_of_a_single_row_or_column_are_read_along_it(int width, int height, double place, double value)
    {
        float[] map = width * height == 1 ? [7] : [7, 9, 4];
        var (x, y) = (width > 1 ? place : 0.5, height > 1 ? place : 0.5);
        Assert.Equal(value, new MapReader(width, height).Sample(map, (float)x, (float)y), 1e-5);
        AssertFour(width, height, map, x, y, value);
    }

    [Fact]
    public void Four_at_once_are_each_what_it_is_alone() => Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Float[-1, 7].Array[8]).Sample((width, height, places) =>
    {
        var map = Enumerable.Range(0, width * height).Select(i => (float)(i * 37 % 11)).ToArray();
        var reads = new MapReader(width, height);
        var four = reads.Sample4(map, Vector128.Create(places, 0), Vector128.Create(places, 4));
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(reads.Sample(map, places[i], places[4 + i]), four.GetElement(i), 1e-4);
        }
    }, iter: Samples.Of(500));

    private static void AssertFour(int width, int height, float[] map, double x, double y, double value)
    {
        var four = new MapReader(width, height).Sample4(map, Vector128.Create((float)x), Vector128.Create((float)y));
        Assert.Equal(value, four.GetElement(0), 1e-5);
        Assert.Equal(value, four.GetElement(3), 1e-5);
    }
}
