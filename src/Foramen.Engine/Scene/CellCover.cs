namespace Foramen.Engine.Scene;

/// <summary>
/// Which pixels of a finer row a cell of a coarser one touches, and how much of the outermost two. Where both are one pixel, the first share
/// is all and the last is zero.
/// </summary>
/// <param name="First">First pixel touched.</param>
/// <param name="Last">Last pixel touched.</param>
/// <param name="FirstShare">Part of the first pixel that is covered, 0 to 1.</param>
/// <param name="LastShare">Part of the last pixel that is covered, 0 to 1.</param>
internal readonly record struct CellCover(int First, int Last, float FirstShare, float LastShare)
{
    /// <summary>The cover of cell number <paramref name="cell"/> of <paramref name="target"/> over <paramref name="source"/> pixels.</summary>
    public static CellCover Of(int cell, int source, int target)
    {
        // In whole numbers: the cell runs from cell·source to (cell + 1)·source in units of 1/target pixel.
        var (from, to) = ((long)cell * source, (long)(cell + 1) * source);
        var (first, last) = ((int)(from / target), (int)((to - 1) / target));
        return first == last
            ? new CellCover(first, last, (float)(to - from) / target, 0)
            : new CellCover(first, last, (float)(((first + 1L) * target) - from) / target, (float)(to - ((long)last * target)) / target);
    }

    /// <summary>The sum over what is covered.</summary>
    public float SumOf(ReadOnlySpan<float> pixels)
    {
        var sum = (pixels[First] * FirstShare) + (pixels[Last] * LastShare);
        for (var i = First + 1; i < Last; i++)
        {
            sum += pixels[i];
        }

        return sum;
    }
}
