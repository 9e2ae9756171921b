using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// How much more air light comes through than from straight overhead: F. Kasten and A. T. Young, Applied Optics 28, 4735 (1989), equation 3.
/// </summary>
public static class AirMass
{
    /// <summary>Relative optical air mass, 1 overhead to about 38 on the horizon.</summary>
    /// <param name="elevation">Elevation as seen, 0° to 90°.</param>
    /// <exception cref="RefusalException">Below the horizon or beyond the zenith.</exception>
    public static double At(Angle elevation)
        => OfDegrees(Guard.Within(elevation.Degrees, 0, 90, "the elevation", "°"));

    internal static double OfDegrees(double elevation)
        => 1 / (Math.Sin(elevation * (Math.PI / 180)) + (0.50572 * Math.Pow(elevation + 6.07995, -1.6364)));
}
