using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print;

public sealed class ConvolutionSourceTests
{
    private static readonly float[] Values = [.. Enumerable.Range(0, 30).Select(i => (float)i)];

    // Six columns and five rows; unknown are (4, 1), (2, 2) and (3, 2).
    private static readonly byte[] Known = [.. Enumerable.Range(0, 30).Select(i => (byte)(i is 10 or 14 or 15 ? 0 : 1))];

    private static readonly ConvolutionSource Source = new(Values, Known, 6, 5);

    [Theory]
    [InlineData(0, 4, 0, 6, 2, 4)]
    [InlineData(-3, 9, -2, 12, 4, 6)]
    [InlineData(2, 2, 0, 6, 2, 3)]
    [InlineData(1, 1, 1, 5, 3, 3)]
    [InlineData(2, 4, 3, 3, 0, 0)]
    public void Columns_with_unknown_pixels_are_counted_from_the_first_asked_for(int fromRow, int toRow, int fromColumn, int columns, int first, int last)
        => Assert.Equal((first, last), Source.UnknownColumns(fromRow, toRow, fromColumn, columns));

    [Fact]
    public void Where_nothing_is_unknown_first_comes_after_last()
    {
        foreach (var (first, last) in new[] { Source.UnknownColumns(3, 4, 0, 6), Source.UnknownColumns(0, 4, 0, 2), new ConvolutionSource(Values, default, 6, 5).UnknownColumns(0, 4, 0, 6) })
        {
            Assert.True(first > last);
        }
    }

    [Theory]
    [InlineData(1, 0, 6, 1, 1, 5)]
    [InlineData(3, 2, 3, 1, 0, 3)]
    [InlineData(2, 0, 6, 2, 2, 4)]
    [InlineData(2, 3, 3, 2, 0, 1)]
    [InlineData(0, 0, 6, 1, 6, 6)]
    [InlineData(4, 0, 6, 1, 6, 6)]
    [InlineData(0, 0, 6, 0, 0, 6)]
    public void A_kernel_stays_inside_between_two_columns_or_nowhere_in_the_row(int row, int column, int count, int half, int from, int to)
        => Assert.Equal((from, to), Source.InnerColumns(row, column, count, half));

    [Fact]
    public void From_a_pixel_the_plane_goes_on_to_its_edges()
    {
        Assert.Equal((1, 3, 3, 1), Source.Reach(3, 1, 3));
        Assert.Equal((2, 2, 2, 2), Source.Reach(2, 3, 2));
        Assert.Equal((3, 0, 0, 3), Source.Reach(0, 5, 3));
    }

    [Fact]
    public void Rows_are_added_and_are_nothing_beyond_the_edges()
    {
        float[] Added(int above, int below, int fromColumn, int length)
        {
            var line = Enumerable.Repeat(-1f, length).ToArray();
            Source.AddedRows(above, below, fromColumn, line);
            return line;
        }

        Assert.Equal([0, 18, 20, 22, 24, 26, 28, 0], Added(1, 2, -1, 8));
        Assert.Equal([8f, 9], Added(1, 1, 2, 2));
        Assert.Equal([2f, 3], Added(-1, 0, 2, 2));
        Assert.Equal([28f, 29, 0], Added(4, 5, 4, 3));
    }

    [Fact]
    public void Known_pixels_are_counted_alike_and_all_are_where_none_is_marked()
    {
        static float[] Counted(ConvolutionSource source, int above, int below, int fromColumn, int length)
        {
            var line = Enumerable.Repeat(-1f, length).ToArray();
            source.AddedKnown(above, below, fromColumn, line);
            return line;
        }

        Assert.Equal([0f, 2, 2, 1, 1, 1, 2, 0], Counted(Source, 1, 2, -1, 8));
        Assert.Equal([1f, 1, 0, 1], Counted(Source, 1, 1, 2, 4));
        Assert.Equal([1f, 1], Counted(Source, -1, 0, 2, 2));
        Assert.Equal([1f, 1, 0], Counted(Source, 4, 5, 4, 3));
        Assert.Equal([2f, 2, 0], Counted(new ConvolutionSource(Values, default, 6, 5), 2, 3, 4, 3));
    }

    [Fact]
    public void A_pixel_or_any_of_a_stretch_is_known()
    {
        Assert.False(Source.IsKnown(4, 1));
        Assert.True(Source.IsKnown(1, 4));
        Assert.False(Source.AnyKnown(2, 2, 2));
        Assert.True(Source.AnyKnown(2, 2, 3));
        Assert.True(new ConvolutionSource(Values, default, 6, 5).AnyKnown(2, 2, 2));
    }

    [Theory]
    [InlineData(6, 5, 1, 4, 3, null)]
    [InlineData(6, 5, 1, 6, 3, "does not reach")]
    [InlineData(6, 5, 1, 4, 5, "does not reach")]
    [InlineData(6, 6, 1, 4, 4, "6 × 6 are 36")]
    [InlineData(0, 5, 0, 0, 5, "width")]
    [InlineData(6, 0, 0, 6, 0, "height")]
    public void A_plane_that_does_not_hold_what_is_asked_is_refused(int width, int height, int margin, int resultWidth, int resultHeight, string? said)
    {
        void Check() => new ConvolutionSource(Values, default, width, height).Check(margin, resultWidth, resultHeight);
        if (said is null)
        {
            Check();
        }
        else
        {
            Assert.Contains(said, Assert.Throws<RefusalException>(Check).Message, StringComparison.Ordinal);
        }
    }
}
