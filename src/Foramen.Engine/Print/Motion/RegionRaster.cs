namespace Foramen.Engine.Print;

/// <summary>Lights of a region in even cells, row by row.</summary>
internal sealed class RegionRaster
{
    private readonly MapReader reads;

    private RegionRaster(int columns, int rows, float[] values)
    {
        (Columns, Rows, Values) = (columns, rows, values);
        reads = new MapReader(columns, rows);
    }

    /// <summary>Cells across.</summary>
    public int Columns { get; }

    /// <summary>Cells down.</summary>
    public int Rows { get; }

    /// <summary>The lights.</summary>
    public float[] Values { get; }

    /// <summary>As the sheet sees it standing; what it does not see of a row counts as the mean of the rest.</summary>
    /// <param name="region">The region.</param>
    /// <param name="most">Most cells across and down.</param>
    public static RegionRaster Of(RegionOnSheet region, int most)
    {
        var (width, height) = region.Size;
        var (columns, rows) = ((int)Math.Clamp(Math.Ceiling(width), 2, most), (int)Math.Clamp(Math.Ceiling(height), 2, most));
        var values = new float[columns * rows];
        for (var row = 0; row < rows; row++)
        {
            var line = values.AsSpan(row * columns, columns);
            for (var column = 0; column < columns; column++)
            {
                line[column] = region.At((column + 0.5) / columns, (row + 0.5) / rows);
            }

            KnownMean.Fill(line);
        }

        return new RegionRaster(columns, rows, values);
    }

    /// <summary>Other lights in the same cells.</summary>
    public RegionRaster With(float[] values) => new(Columns, Rows, values);

    /// <summary>The light at a place, straight between the cells.</summary>
    public float At(double u, double v) => reads.Sample(Values, (float)((u * Columns) - 0.5), (float)((v * Rows) - 0.5));

    /// <summary>The same on its side: rows become columns.</summary>
    public RegionRaster Turned()
    {
        var turned = new float[Values.Length];
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                turned[(column * Rows) + row] = Values[(row * Columns) + column];
            }
        }

        return new RegionRaster(Rows, Columns, turned);
    }

    /// <summary>Each row replaced by something made of it.</summary>
    public RegionRaster EachRow(RowChange change)
    {
        var changed = new float[Values.Length];
        for (var row = 0; row < Rows; row++)
        {
            change(Values.AsSpan(row * Columns, Columns), changed.AsSpan(row * Columns, Columns));
        }

        return With(changed);
    }

    /// <summary>Makes a row of another.</summary>
    public delegate void RowChange(ReadOnlySpan<float> row, Span<float> into);
}
