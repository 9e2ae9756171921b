using System.Numerics.Tensors;

namespace Foramen.Engine.Scene;

/// <summary>
/// Averages rows of luminance over the cells of a coarser grid. Cells share their border pixels in proportion, so the mean of the whole is
/// kept at any ratio of sizes. Rows are added up first, because that can be done on many pixels at once.
/// </summary>
internal sealed class AreaAverage
{
    private readonly float[] sums;
    private readonly float[] blockedSums;
    private readonly byte[] blown;
    private readonly CellCover[] covers;
    private float rowsTaken;
    private bool anyBlown;
    private bool anyBlocked;

    /// <summary>For one row of cells; reuse it for the next after <see cref="Finish"/>.</summary>
    /// <param name="sourceWidth">Columns of the finer grid.</param>
    /// <param name="targetWidth">Columns of the coarser grid.</param>
    public AreaAverage(int sourceWidth, int targetWidth)
    {
        covers = new CellCover[targetWidth];
        for (var cell = 0; cell < targetWidth; cell++)
        {
            covers[cell] = CellCover.Of(cell, sourceWidth, targetWidth);
        }

        sums = new float[sourceWidth];
        blockedSums = new float[sourceWidth];
        blown = new byte[sourceWidth];
    }

    /// <summary>Takes a row in, with the share of it that this row of cells covers.</summary>
    public void Add(ReadOnlySpan<float> values, ReadOnlySpan<LuminanceLimit> limits, float share)
    {
        rowsTaken += share;
        TensorPrimitives.MultiplyAdd(values, share, sums, sums);
        if (!limits.ContainsAnyExcept(LuminanceLimit.Exact))
        {
            return;
        }

        for (var i = 0; i < values.Length; i++)
        {
            if (limits[i] == LuminanceLimit.AtLeast)
            {
                blown[i] = 1;
                anyBlown = true;
            }
            else if (limits[i] == LuminanceLimit.AtMost)
            {
                blockedSums[i] += values[i] * share;
                anyBlocked = true;
            }
        }
    }

    /// <summary>Writes the averages and limits of the cells out, and starts afresh.</summary>
    public void Finish(Span<float> values, Span<LuminanceLimit> limits)
    {
        var perCell = values.Length / (rowsTaken * sums.Length);
        for (var cell = 0; cell < values.Length; cell++)
        {
            var sum = covers[cell].SumOf(sums);
            values[cell] = sum * perCell;
            limits[cell] = anyBlown || anyBlocked ? LimitOf(covers[cell], sum) : LuminanceLimit.Exact;
        }

        Array.Clear(sums);
        Array.Clear(blockedSums);
        Array.Clear(blown);
        (rowsTaken, anyBlown, anyBlocked) = (0, false, false);
    }

    private LuminanceLimit LimitOf(CellCover cover, float sum)
    {
        if (anyBlown && blown.AsSpan(cover.First, cover.Last - cover.First + 1).Contains((byte)1))
        {
            return LuminanceLimit.AtLeast;
        }

        return anyBlocked && cover.SumOf(blockedSums) > LuminanceMap.BlockedShareThatMatters * sum ? LuminanceLimit.AtMost : LuminanceLimit.Exact;
    }
}
