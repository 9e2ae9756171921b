using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Square pixels laid over the picture area as the finished picture is looked at; rows count downwards. Immutable.</summary>
public sealed record SheetGrid
{
    /// <summary>Most pixels along the long side.</summary>
    public const int MostPixels = 12_000;

    private SheetGrid(int width, int height, double pitch)
    {
        Width = width;
        Height = height;
        PitchMillimetres = pitch;
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>From pixel to pixel, mm.</summary>
    public double PitchMillimetres { get; }

    /// <summary>A grid with so many pixels along the picture's long side; the short side is rounded to whole pixels.</summary>
    /// <exception cref="RefusalException">Not between 16 and 12 000 pixels.</exception>
    public static SheetGrid WithLongSide(SheetProjection projection, int pixels)
    {
        var (width, height) = (projection.PictureSize.Width.Millimetres, projection.PictureSize.Height.Millimetres);
        var pitch = Math.Max(width, height) / Guard.Within(pixels, 16, MostPixels, "the print's long side", "pixels");
        return new SheetGrid(Math.Max(1, (int)Math.Round(width / pitch)), Math.Max(1, (int)Math.Round(height / pitch)), pitch);
    }

    /// <summary>A grid over at least the same area about the same middle with pixels so many times as wide.</summary>
    internal SheetGrid Coarser(int factor)
        => new((Width + factor - 1) / factor, (Height + factor - 1) / factor, PitchMillimetres * factor);

    /// <summary>Across the picture, mm to the right of its middle, of a column; halves lie between pixels.</summary>
    public double XMillimetres(double column) => (column + 0.5 - (Width / 2.0)) * PitchMillimetres;

    /// <summary>The column, halves between pixels, of a place across the picture: the inverse of <see cref="XMillimetres"/>.</summary>
    public double ColumnAt(double xMillimetres) => (xMillimetres / PitchMillimetres) + (Width / 2.0) - 0.5;

    /// <summary>The row of a place up the picture: the inverse of <see cref="YMillimetres"/>.</summary>
    public double RowAt(double yMillimetres) => (Height / 2.0) - 0.5 - (yMillimetres / PitchMillimetres);

    /// <summary>Up the picture, mm above its middle, of a row; halves lie between pixels.</summary>
    public double YMillimetres(double row) => ((Height / 2.0) - row - 0.5) * PitchMillimetres;
}
