using System.Numerics.Tensors;

namespace Foramen.Engine.Camera;

/// <summary>The darkest and the brightest code of every square block of a scan: what is small and stands out survives, however large the scan is.</summary>
internal sealed class BlockExtremes
{
    private const double MostBlocks = 1e6;

    private BlockExtremes(int side, int columns, int rows)
    {
        (Side, Columns, Rows) = (side, columns, rows);
        (Darkest, Brightest) = (new byte[columns * rows], new byte[columns * rows]);
    }

    /// <summary>Pixels along a block's side.</summary>
    public int Side { get; }

    /// <summary>Blocks across.</summary>
    public int Columns { get; }

    /// <summary>Blocks down.</summary>
    public int Rows { get; }

    /// <summary>Darkest code of each block, row by row.</summary>
    public byte[] Darkest { get; }

    /// <summary>Brightest code of each block, row by row.</summary>
    public byte[] Brightest { get; }

    /// <summary>The median code, from one pixel of each block.</summary>
    public byte Median { get; private set; }

    /// <summary>The blocks of a scan, in one pass over its rows.</summary>
    public static BlockExtremes Of(ScanImage scan)
    {
        var side = Math.Max(2, (int)Math.Ceiling(Math.Sqrt(scan.Width * (double)scan.Height / MostBlocks)));
        var blocks = new BlockExtremes(side, (scan.Width + side - 1) / side, (scan.Height + side - 1) / side);
        var histogram = new int[256];
        var low = new byte[scan.Width];
        var high = new byte[scan.Width];
        for (var row = 0; row < blocks.Rows; row++)
        {
            var first = scan.Row(row * side);
            first.CopyTo(low);
            first.CopyTo(high);
            for (var next = (row * side) + 1; next < Math.Min(scan.Height, (row + 1) * side); next++)
            {
                TensorPrimitives.Min(low, scan.Row(next), low);
                TensorPrimitives.Max(high, scan.Row(next), high);
            }

            for (var column = 0; column < blocks.Columns; column++)
            {
                var from = column * side;
                var count = Math.Min(side, scan.Width - from);
                blocks.Darkest[(row * blocks.Columns) + column] = Least(low.AsSpan(from, count));
                blocks.Brightest[(row * blocks.Columns) + column] = Most(high.AsSpan(from, count));
                histogram[first[from]]++;
            }
        }

        blocks.Median = MedianOf(histogram, blocks.Columns * blocks.Rows);
        return blocks;
    }

    private static byte Least(ReadOnlySpan<byte> codes)
    {
        var least = byte.MaxValue;
        foreach (var code in codes)
        {
            least = Math.Min(least, code);
        }

        return least;
    }

    private static byte Most(ReadOnlySpan<byte> codes)
    {
        var most = byte.MinValue;
        foreach (var code in codes)
        {
            most = Math.Max(most, code);
        }

        return most;
    }

    private static byte MedianOf(int[] histogram, int count)
    {
        var seen = 0;
        for (var code = 0; code < histogram.Length; code++)
        {
            seen += histogram[code];
            if (2 * seen >= count)
            {
                return (byte)code;
            }
        }

        return byte.MaxValue;
    }
}
