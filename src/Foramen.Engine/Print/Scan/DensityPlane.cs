namespace Foramen.Engine.Print;

/// <summary>Densities in rows, NaN where nothing is known: what is laid over one another.</summary>
internal sealed class DensityPlane(int width, int height, float[] values)
{
    public int Width { get; } = width;

    public int Height { get; } = height;

    public float At(int column, int row) => values[(row * Width) + column];

    public ReadOnlySpan<float> Row(int row) => values.AsSpan(row * Width, Width);

    /// <summary>Means of what is known over the cells of a grid that is no finer; a pixel on a border counts on each side with what of it lies there, so that the picture stays in its place.</summary>
    public DensityPlane Reduced(int columns, int rows)
    {
        var (sums, weights) = (new double[columns * rows], new double[columns * rows]);
        var (across, down) = (Parts(Width, columns), Parts(Height, rows));
        for (var row = 0; row < Height; row++)
        {
            for (var column = 0; column < Width; column++)
            {
                var value = At(column, row);
                if (!float.IsNaN(value))
                {
                    foreach (var (cellRow, partDown) in down[row])
                    {
                        foreach (var (cellColumn, partAcross) in across[column])
                        {
                            var cell = (cellRow * columns) + cellColumn;
                            sums[cell] += value * partDown * partAcross;
                            weights[cell] += partDown * partAcross;
                        }
                    }
                }
            }
        }

        return new DensityPlane(columns, rows, [.. sums.Select((sum, i) => weights[i] > 0 ? (float)(sum / weights[i]) : float.NaN)]);
    }

    // For each pixel the one or two cells that it lies in, and how much of it.
    private static (int Cell, double Part)[][] Parts(int pixels, int cells) => [.. Enumerable.Range(0, pixels).Select(pixel =>
    {
        var cell = pixel * cells / pixels;
        var part = Math.Min(1, (((cell + 1) * pixels) - (pixel * cells)) / (double)cells);
        return part < 1 ? new[] { (cell, part), (cell + 1, 1 - part) } : [(cell, 1.0)];
    })];

    /// <summary>
    /// How alike two planes are when the other is shifted: the correlation coefficient (Pearson) of the densities where both are known, inside a rim; null where fewer than
    /// three tenths of the picture lie over one another, or either is all of one tone.
    /// </summary>
    public double? LikenessTo(DensityPlane other, int rim, int right, int down)
    {
        double n = 0, a = 0, b = 0, aa = 0, bb = 0, ab = 0;
        var (from, to) = (Math.Max(rim, rim - right), Math.Min(Width - rim, Width - rim - right));
        for (var row = Math.Max(rim, rim - down); row < Math.Min(Height - rim, Height - rim - down) && to > from; row++)
        {
            var mine = values.AsSpan((row * Width) + from, to - from);
            var others = other.Row(row + down).Slice(from + right, mine.Length);
            for (var i = 0; i < mine.Length; i++)
            {
                double x = mine[i];
                double y = others[i];
                if (!double.IsNaN(x) && !double.IsNaN(y))
                {
                    n++;
                    a += x;
                    b += y;
                    aa += x * x;
                    bb += y * y;
                    ab += x * y;
                }
            }
        }

        var (sa, sb) = ((n * aa) - (a * a), (n * bb) - (b * b));
        return n >= 0.3 * (Width - (2 * rim)) * (Height - (2 * rim)) && sa > 1e-6 * n * n && sb > 1e-6 * n * n
            ? ((n * ab) - (a * b)) / Math.Sqrt(sa * sb)
            : null;
    }
}
