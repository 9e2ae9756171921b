using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class ConnectedCellsTests
{
    private static readonly Gen<(int Columns, int Rows, bool[] Flags)> AnyFlags = Gen.Select(Gen.Int[1, 9], Gen.Int[1, 9])
        .SelectMany((columns, rows) => Gen.Double[0, 1].Array[columns * rows].Select(chances => (columns, rows, Array.ConvertAll(chances, chance => chance < 0.35))));

    // Another road: every flagged cell takes the least label among itself and the eight about it, until nothing changes.
    [Fact]
    public void Groups_are_those_of_labels_that_spread() => AnyFlags.Sample(cells =>
    {
        var (columns, rows, flags) = cells;
        var label = Enumerable.Range(0, flags.Length).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            for (var i = 0; i < flags.Length; i++)
            {
                for (var j = 0; j < flags.Length; j++)
                {
                    if (flags[i] && flags[j] && Math.Abs((i % columns) - (j % columns)) <= 1 && Math.Abs((i / columns) - (j / columns)) <= 1 && label[j] < label[i])
                    {
                        (label[i], changed) = (label[j], true);
                    }
                }
            }
        }

        var expected = Enumerable.Range(0, flags.Length).Where(i => flags[i]).GroupBy(i => label[i]).Select(group => new ConnectedCells(
            group.Min(i => i % columns), group.Min(i => i / columns), group.Max(i => i % columns), group.Max(i => i / columns), group.Count()));
        Assert.Equal(expected.OrderBy(group => group.ToString()), ConnectedCells.Of((bool[])flags.Clone(), columns, rows).OrderBy(group => group.ToString()));
    });

    [Fact]
    public void A_flood_tells_each_cell_once_and_uses_it_up() => AnyFlags.Sample(cells =>
    {
        var (columns, rows, flags) = cells;
        var left = (bool[])flags.Clone();
        var told = new List<int>();
        for (var start = 0; start < left.Length; start++)
        {
            if (left[start])
            {
                ConnectedCells.Flood(left, columns, rows, start, new Stack<int>(), (x, y) => told.Add((y * columns) + x));
            }
        }

        Assert.Equal(Enumerable.Range(0, flags.Length).Where(i => flags[i]), told.Order());
        Assert.DoesNotContain(true, left);
    });

    // Cells of 3 pixels: columns 2 to 4 are pixels 6 to 14, rows 1 to 5 pixels 3 to 17; seven cells are 63 pixels.
    [Fact]
    public void In_pixels_a_cell_is_as_wide_as_its_side()
        => Assert.Equal(new ConnectedCells(6, 3, 14, 17, 63), new ConnectedCells(2, 1, 4, 5, 7).Scaled(3));
}
