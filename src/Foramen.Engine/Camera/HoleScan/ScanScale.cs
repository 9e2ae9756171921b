using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>How large a pixel of a scan is, and how well that is known. Pixels are square. Immutable.</summary>
public sealed record ScanScale
{
    /// <summary>
    /// Relative spread of a scanner's resolution that nobody has checked with a ruler: 0.5 %, mostly along the way the carriage runs (common practice, no source).
    /// </summary>
    public const double UncheckedRelativeSd = 0.005;

    private const double MillimetresPerInch = 25.4;

    private ScanScale(double millimetresPerPixel, double relativeSd) => (MillimetresPerPixel, RelativeSd) = (millimetresPerPixel, relativeSd);

    /// <summary>From pixel to pixel, mm.</summary>
    public double MillimetresPerPixel { get; }

    /// <summary>Standard deviation of that over itself, 0 to 0.2.</summary>
    public double RelativeSd { get; }

    /// <summary>Pixels to the inch of 25.4 mm.</summary>
    public double DotsPerInch => MillimetresPerInch / MillimetresPerPixel;

    /// <summary>A resolution as scanners state it.</summary>
    /// <param name="dotsPerInch">50 to 100 000 (a microscope's camera).</param>
    /// <param name="relativeSd">0 to 0.2.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static ScanScale FromDotsPerInch(double dotsPerInch, double relativeSd = UncheckedRelativeSd)
        => new(
            MillimetresPerInch / Guard.Within(dotsPerInch, 50, 100_000, "the resolution", "dpi"),
            Guard.Within(relativeSd, 0, 0.2, "the relative spread of the resolution"));

    /// <summary>Two marks of a ruler in the picture.</summary>
    /// <param name="apart">How far apart they are in truth, 0.1 mm to 1 m.</param>
    /// <param name="pixels">How far apart they are in the picture, 10 pixels or more.</param>
    /// <param name="pointSdPixels">How well each was pointed at; half a pixel where nothing is said.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static ScanScale FromRuler(Length apart, double pixels, double pointSdPixels = 0.5)
    {
        Guard.Within(apart.Millimetres, 0.1, 1000, "the distance between the ruler's marks", "mm");
        Guard.Within(pixels, 10, 1e5, "the distance between the ruler's marks in the picture", "pixels");
        return FromDotsPerInch(MillimetresPerInch * pixels / apart.Millimetres, Math.Min(0.2, Math.Sqrt(2) * pointSdPixels / pixels));
    }
}
