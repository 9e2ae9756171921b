using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// The scene's luminances, pixel by pixel in rows from the top, in cd/m². Where the photograph is blown or blocked, a value only bounds the
/// truth, and says so. Immutable.
/// </summary>
/// <remarks>
/// A pixel is blown if any channel that matters has a code of 254 or more; it is blocked if none that matters has a code above 2, and then
/// holds the luminance of code 2. A channel matters if its weight is at least 0.05: losing a stop in a lesser one changes the sum by less
/// than a fourteenth of a stop.
/// </remarks>
public sealed class LuminanceMap
{
    /// <summary>Codes from here on are blown.</summary>
    public const byte BlownCode = 254;

    /// <summary>Codes up to here are blocked.</summary>
    public const byte BlockedCode = 2;

    /// <summary>Least weight of a channel whose being blown or blocked matters.</summary>
    public const double WeightThatMatters = 0.05;

    /// <summary>
    /// Least part of an average that may come from blocked pixels before the average is only an upper bound: a tenth, for if they were
    /// truly black it would fall by a seventh of a stop.
    /// </summary>
    public const double BlockedShareThatMatters = 0.1;

    private const int RowsInBand = 64;

    private readonly float[] values;
    private readonly LuminanceLimit[] limits;

    private LuminanceMap(int width, int height, float[] values, LuminanceLimit[] limits)
    {
        Width = width;
        Height = height;
        this.values = values;
        this.limits = limits;
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Luminances, cd/m², row by row from the top.</summary>
    public ReadOnlySpan<float> Values => values;

    /// <summary>What each value is: the thing itself, or a bound.</summary>
    public ReadOnlySpan<LuminanceLimit> Limits => limits;

    /// <summary>The same values for rooms and hosts that must hold on to them across calls.</summary>
    public ReadOnlyMemory<float> ValuesMemory => values;

    /// <summary>Luminance as a paper sees it, on a scale where a neutral surface keeps its luminance.</summary>
    /// <param name="photo">An anchored photograph.</param>
    /// <param name="sight">The paper's sight in the light of the scene.</param>
    /// <param name="reduction">Average over about this many pixels each way at once; 1 for none.</param>
    /// <exception cref="RefusalException">The photograph is not anchored, or the reduction not between 1 and 1000.</exception>
    public static LuminanceMap AsPaperSees(ScenePhotograph photo, PaperSight sight, int reduction = 1)
    {
        var sums = ChannelSums.Absolute(photo, sight);
        var (width, height) = (photo.Width, photo.Height);
        void ReadRow(int row, Span<float> into, Span<LuminanceLimit> limitsInto)
            => sums.ReadRow(photo.Rgba.Span.Slice(4 * width * row, 4 * width), into, limitsInto);

        return reduction == 1
            ? FromRows(width, height, ReadRow)
            : Average(width, height, ReducedSize(width, reduction), ReducedSize(height, reduction), ReadRow);
    }

    /// <summary>A map of known luminances, such as a rendered scene's.</summary>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="candelasPerSquareMetre">Values row by row from the top, cd/m².</param>
    /// <exception cref="RefusalException">Not width × height values, or one that is negative, infinite or not a number.</exception>
    public static LuminanceMap FromValues(int width, int height, ReadOnlySpan<float> candelasPerSquareMetre)
    {
        Guard.Within(width, 1, 65535, "the map's width", "pixels");
        Guard.Within(height, 1, 65535, "the map's height", "pixels");
        if (candelasPerSquareMetre.Length != (long)width * height)
        {
            throw new RefusalException($"The map has {candelasPerSquareMetre.Length} values; {width} × {height} are {(long)width * height}.");
        }

        foreach (var value in candelasPerSquareMetre)
        {
            Guard.Within(value, Luminance.Min, Luminance.Max, "a luminance in the map", "cd/m²");
        }

        return new LuminanceMap(width, height, candelasPerSquareMetre.ToArray(), new LuminanceLimit[candelasPerSquareMetre.Length]);
    }

    /// <summary>Luminance of a pixel.</summary>
    /// <exception cref="RefusalException">Outside the map.</exception>
    public Luminance At(int column, int row) => Luminance.FromCandelasPerSquareMetre(values[IndexOf(column, row)]);

    /// <summary>What the value of a pixel is.</summary>
    /// <exception cref="RefusalException">Outside the map.</exception>
    public LuminanceLimit LimitAt(int column, int row) => limits[IndexOf(column, row)];

    /// <summary>A map smaller by about a factor each way: sizes are divided and rounded, at least one pixel is left.</summary>
    /// <exception cref="RefusalException">The factor is not between 1 and 1000.</exception>
    public LuminanceMap Reduced(int factor) => ReducedTo(ReducedSize(Width, factor), ReducedSize(Height, factor));

    /// <summary>
    /// A smaller map; each pixel is the mean over the area it covers, in linear light. A mean with any blown part is 'at least'; one whose
    /// blocked parts make up a tenth or more of it is 'at most'. With both, the blown part decides.
    /// </summary>
    /// <exception cref="RefusalException">Larger than this map, or empty.</exception>
    public LuminanceMap ReducedTo(int width, int height)
    {
        Guard.Within(width, 1, Width, "the width to reduce to", "pixels");
        Guard.Within(height, 1, Height, "the height to reduce to", "pixels");
        if (width == Width && height == Height)
        {
            return this;
        }

        return Average(Width, Height, width, height, (row, into, limitsInto) =>
        {
            values.AsSpan(row * Width, Width).CopyTo(into);
            limits.AsSpan(row * Width, Width).CopyTo(limitsInto);
        });
    }

    private static int ReducedSize(int size, int factor)
        => Math.Max(1, (int)Math.Round(size / Guard.Within(factor, 1, 1000, "the factor to reduce by")));

    private static LuminanceMap FromRows(int width, int height, RowReader reader)
    {
        var values = GC.AllocateUninitializedArray<float>(width * height);
        var limits = GC.AllocateUninitializedArray<LuminanceLimit>(width * height);
        RowWork.Run(height, RowsInBand, (from, to) =>
        {
            for (var row = from; row < to; row++)
            {
                reader(row, values.AsSpan(row * width, width), limits.AsSpan(row * width, width));
            }
        });
        return new LuminanceMap(width, height, values, limits);
    }

    private static LuminanceMap Average(int sourceWidth, int sourceHeight, int width, int height, RowReader reader)
    {
        var values = new float[width * height];
        var limits = new LuminanceLimit[width * height];
        RowWork.Run(height, RowsInBand, (from, to) =>
        {
            var average = new AreaAverage(sourceWidth, width);
            var (rowValues, rowLimits) = (new float[sourceWidth], new LuminanceLimit[sourceWidth]);
            for (var row = from; row < to; row++)
            {
                var cover = CellCover.Of(row, sourceHeight, height);
                for (var source = cover.First; source <= cover.Last; source++)
                {
                    reader(source, rowValues, rowLimits);
                    average.Add(rowValues, rowLimits, source == cover.First ? cover.FirstShare : source == cover.Last ? cover.LastShare : 1);
                }

                average.Finish(values.AsSpan(row * width, width), limits.AsSpan(row * width, width));
            }
        });
        return new LuminanceMap(width, height, values, limits);
    }

    private int IndexOf(int column, int row)
    {
        Guard.Within(column, 0, Width - 1, "the column");
        Guard.Within(row, 0, Height - 1, "the row");
        return (row * Width) + column;
    }

    private delegate void RowReader(int row, Span<float> values, Span<LuminanceLimit> limits);
}
