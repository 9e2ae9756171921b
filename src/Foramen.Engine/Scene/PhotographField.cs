using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// Which directions an upright photograph covers: a straight-line picture with its axis in the middle. From the focal length in terms of
/// 36 × 24 mm, taken to mean an equal angle along the diagonal, which is 43.27 mm there (CIPA's usual meaning; a few makers mean the width,
/// which differs by 4 % on a 4:3 picture). A cropped or stitched photograph does not keep it.
/// </summary>
public sealed record PhotographField
{
    /// <summary>Widest angle along the diagonal that a straight-line picture is believed to have, degrees.</summary>
    public const double WidestDegrees = 150;

    private const double Diagonal35Millimetres = 43.266615305567875;

    private PhotographField(int width, int height, double focalLengthPixels)
    {
        Width = width;
        Height = height;
        FocalLengthPixels = focalLengthPixels;
    }

    /// <summary>Columns of the upright photograph.</summary>
    public int Width { get; }

    /// <summary>Rows of the upright photograph.</summary>
    public int Height { get; }

    /// <summary>Distance of the picture plane, in pixels of this width and height.</summary>
    public double FocalLengthPixels { get; }

    /// <summary>Angle from the left edge to the right edge.</summary>
    public Angle Horizontal => Across(Width);

    /// <summary>Angle from the top edge to the bottom edge.</summary>
    public Angle Vertical => Across(Height);

    /// <summary>The field of a photograph whose file holds the focal length in terms of 36 × 24 mm.</summary>
    /// <exception cref="RefusalException">The file does not hold it, or it is absurd.</exception>
    public static PhotographField Of(ScenePhotograph photo) => FromFocalLength35(
        photo.Width,
        photo.Height,
        photo.Facts.FocalLength35mm ?? throw new RefusalException(
            "The photograph's file does not hold its focal length in terms of 36 × 24 mm; give that length or the angle it covers."));

    /// <summary>By the focal length in terms of 36 × 24 mm: 4 to 3000 mm.</summary>
    /// <param name="width">Columns of the upright photograph.</param>
    /// <param name="height">Rows of the upright photograph.</param>
    /// <param name="focalLength">Such as 26 mm.</param>
    /// <exception cref="RefusalException">Outside the range, or wider than a straight-line picture can be.</exception>
    public static PhotographField FromFocalLength35(int width, int height, Length focalLength)
    {
        var millimetres = Guard.Within(focalLength.Millimetres, 4, 3000, "the focal length in terms of 36 × 24 mm", "mm");
        return Create(width, height, millimetres / Diagonal35Millimetres * double.Hypot(width, height));
    }

    /// <summary>By the angle it covers from left to right: 0.5 to 140 degrees.</summary>
    /// <exception cref="RefusalException">Outside the range, or wider than a straight-line picture can be.</exception>
    public static PhotographField FromHorizontalAngle(int width, int height, Angle angle)
    {
        Guard.Within(angle.Degrees, 0.5, 140, "the angle the photograph covers from left to right", "°");
        return Create(width, height, width / 2.0 / Math.Tan(angle.Radians / 2));
    }

    /// <summary>
    /// Where a direction falls in the photograph, in fractions from the left and the top; outside 0 to 1 the photograph does not cover it.
    /// </summary>
    /// <param name="right">Tangent of the direction to the right of the axis (x/z in camera axes).</param>
    /// <param name="up">Tangent of the direction above the axis (y/z in camera axes).</param>
    public (double X, double Y) Locate(double right, double up)
        => (0.5 + (right * FocalLengthPixels / Width), 0.5 - (up * FocalLengthPixels / Height));

    /// <summary>The direction of a place in the photograph, as tangents to the right of the axis and above it.</summary>
    public (double Right, double Up) DirectionOf(PhotographPosition position)
        => ((position.X - 0.5) * Width / FocalLengthPixels, (0.5 - position.Y) * Height / FocalLengthPixels);

    private static PhotographField Create(int width, int height, double focalLengthPixels)
    {
        Guard.Within(width, 1, 65535, "the photograph's width", "pixels");
        Guard.Within(height, 1, 65535, "the photograph's height", "pixels");
        var field = new PhotographField(width, height, focalLengthPixels);
        Guard.Within(field.Across(double.Hypot(width, height)).Degrees, 0, WidestDegrees, "the angle the photograph covers along its diagonal", "°");
        return field;
    }

    private Angle Across(double pixels) => Angle.FromRadians(2 * Math.Atan2(pixels / 2, FocalLengthPixels));
}
