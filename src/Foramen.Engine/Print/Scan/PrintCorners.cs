using Foramen.Engine.Camera;

namespace Foramen.Engine.Print;

/// <summary>The corners of a sheet on a scan or a photograph of it, named as it lies there. Immutable.</summary>
/// <param name="TopLeft">Pixel of the upper left corner.</param>
/// <param name="TopRight">Of the upper right one.</param>
/// <param name="BottomRight">Of the lower right one.</param>
/// <param name="BottomLeft">Of the lower left one.</param>
public sealed record PrintCorners(PixelPoint TopLeft, PixelPoint TopRight, PixelPoint BottomRight, PixelPoint BottomLeft)
{
    /// <summary>The sheet's width over its height as it lies there, by the mean of opposite sides; perspective falsifies it a little.</summary>
    public double WidthOverHeight => (TopLeft.DistanceTo(TopRight) + BottomLeft.DistanceTo(BottomRight)) / (TopLeft.DistanceTo(BottomLeft) + TopRight.DistanceTo(BottomRight));

    /// <summary>Pixels along its longer side.</summary>
    public double LongSidePixels => Math.Max(
        Math.Max(TopLeft.DistanceTo(TopRight), BottomLeft.DistanceTo(BottomRight)), Math.Max(TopLeft.DistanceTo(BottomLeft), TopRight.DistanceTo(BottomRight)));

    /// <summary>From places on the sheet, as it lies there, to pixels.</summary>
    /// <exception cref="Quantities.RefusalException">They make no four-sided figure, or run the wrong way round.</exception>
    public Homography ToMap() => Homography.Through(TopLeft, TopRight, BottomRight, BottomLeft);

    /// <summary>The same sheet with its names moved on by quarter turns: what is called the top is the side that lies to the left, after one.</summary>
    /// <param name="quarters">How many, any whole number.</param>
    public PrintCorners Turned(int quarters)
    {
        PixelPoint[] corners = [TopLeft, TopRight, BottomRight, BottomLeft];
        PixelPoint At(int index) => corners[((index - quarters) % 4 + 4) % 4];
        return new PrintCorners(At(0), At(1), At(2), At(3));
    }
}
