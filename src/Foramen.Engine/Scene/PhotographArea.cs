namespace Foramen.Engine.Scene;

/// <summary>A part of a photograph whose luminance can be read.</summary>
public abstract record PhotographArea : ToneSource
{
    private protected PhotographArea()
    {
    }

    /// <summary>Its middle.</summary>
    public abstract PhotographPosition Middle { get; }

    /// <summary>Whether the reading is the median of the area, as for one surface, instead of its mean.</summary>
    internal abstract bool ByMedian { get; }

    /// <summary>Calls back with half-open runs of columns, row by row, clipped to the photograph; at least one pixel in all.</summary>
    internal abstract void ForEachRun(int width, int height, Action<int, int, int> rowFromTo);
}
