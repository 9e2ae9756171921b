using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A plane of values of which some may be unknown, and of which all beyond the edges are.</summary>
internal readonly struct ConvolutionSource(ReadOnlyMemory<float> values, ReadOnlyMemory<byte> known, int width, int height)
{
    /// <summary>Checks the plane's size, with a margin around a result of the given size.</summary>
    public void Check(int margin, int resultWidth, int resultHeight)
    {
        Guard.Within(width, 1, 65535, "the plane's width", "pixels");
        Guard.Within(height, 1, 65535, "the plane's height", "pixels");
        if (values.Length < (long)width * height || (!known.IsEmpty && known.Length < (long)width * height))
        {
            throw new RefusalException($"The plane holds {values.Length} values; {width} × {height} are {(long)width * height}.");
        }

        if (width != resultWidth + (2 * margin) || height != resultHeight + (2 * margin))
        {
            throw new RefusalException($"A plane of {width} × {height} does not reach {margin} pixels beyond {resultWidth} × {resultHeight}.");
        }
    }

    /// <summary>One pixel.</summary>
    public bool IsKnown(int column, int row) => known.IsEmpty || known.Span[(row * width) + column] != 0;

    /// <summary>Whether any pixel of a stretch of a row is known.</summary>
    public bool AnyKnown(int row, int column, int count)
        => known.IsEmpty || known.Span.Slice((row * width) + column, count).ContainsAnyExcept((byte)0);

    /// <summary>The first and the last column, counted from the first given, in which a block has unknown pixels; the part beyond the edges does not count.</summary>
    /// <returns>First after last if there are none.</returns>
    public (int First, int Last) UnknownColumns(int fromRow, int toRow, int fromColumn, int columns)
    {
        var (first, last) = (int.MaxValue, -1);
        if (known.IsEmpty)
        {
            return (first, last);
        }

        var start = Math.Max(0, fromColumn);
        var length = Math.Min(width, fromColumn + columns) - start;
        for (var row = Math.Max(0, fromRow); row <= Math.Min(height - 1, toRow); row++)
        {
            var flags = known.Span.Slice((row * width) + start, length);
            if (flags.IndexOf((byte)0) is >= 0 and var found)
            {
                first = Math.Min(first, found + start - fromColumn);
                last = Math.Max(last, flags.LastIndexOf((byte)0) + start - fromColumn);
            }
        }

        return (first, last);
    }

    /// <summary>The pixels of a stretch of a row about which a kernel stays within the plane: from the first index up to, not including, the second.</summary>
    public (int From, int To) InnerColumns(int row, int column, int count, int half)
        => row < half || row >= height - half
            ? (count, count)
            : (Math.Clamp(half - column, 0, count), Math.Clamp(width - half - column, 0, count));

    /// <summary>How far from a pixel the plane goes on, up to the kernel's half width.</summary>
    public (int Left, int Right, int Above, int Below) Reach(int row, int column, int half)
        => (Math.Min(half, column), Math.Min(half, width - 1 - column), Math.Min(half, row), Math.Min(half, height - 1 - row));

    /// <summary>Adds a stretch of two rows (or gives one, if both are the same), zero beyond the edges.</summary>
    public void AddedRows(int above, int below, int fromColumn, Span<float> line)
    {
        var (start, length) = Inside(fromColumn, line);
        var inner = line.Slice(start - fromColumn, length);
        FoldedKernel.AddRows(Row(above, start, length), above == below ? default : Row(below, start, length), inner);
    }

    /// <summary>The same with 1 for known and 0 for unknown in place of the values.</summary>
    public void AddedKnown(int above, int below, int fromColumn, Span<float> line)
    {
        var (start, length) = Inside(fromColumn, line);
        var inner = line.Slice(start - fromColumn, length);
        inner.Clear();
        Count(above, start, length, inner);
        if (above != below)
        {
            Count(below, start, length, inner);
        }
    }

    private (int Start, int Length) Inside(int fromColumn, Span<float> line)
    {
        var start = Math.Max(0, fromColumn);
        var end = Math.Min(width, fromColumn + line.Length);
        line[..(start - fromColumn)].Clear();
        line[(end - fromColumn)..].Clear();
        return (start, end - start);
    }

    private ReadOnlySpan<float> Row(int row, int start, int length)
        => row < 0 || row >= height ? default : values.Span.Slice((row * width) + start, length);

    private void Count(int row, int start, int length, Span<float> inner)
    {
        if (row < 0 || row >= height)
        {
            return;
        }

        var flags = known.IsEmpty ? default : known.Span.Slice((row * width) + start, length);
        for (var i = 0; i < length; i++)
        {
            inner[i] += flags.IsEmpty ? 1 : flags[i];
        }
    }
}
