using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A place in a scan, in pixels from its upper left corner: the middle of the first pixel is at 0.5, 0.5. Within 0 to 65 535. Immutable.</summary>
public readonly record struct PixelPoint
{
    private PixelPoint(double x, double y) => (X, Y) = (x, y);

    /// <summary>To the right.</summary>
    public double X { get; }

    /// <summary>Downwards.</summary>
    public double Y { get; }

    /// <summary>From pixels to the right and downwards.</summary>
    /// <exception cref="RefusalException">Not within 0 to 65 535.</exception>
    public static PixelPoint At(double x, double y)
        => new(Guard.Within(x, 0, ushort.MaxValue, "the place across the scan", "pixels"), Guard.Within(y, 0, ushort.MaxValue, "the place down the scan", "pixels"));

    /// <summary>How far to another, pixels.</summary>
    public double DistanceTo(PixelPoint other) => double.Hypot(other.X - X, other.Y - Y);
}
