using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>How far stars, sun and moon go across the sky during an exposure.</summary>
public static class SkyTrail
{
    /// <summary>Turn of the sky in an hour of clock time: a full turn in 23 h 56 min 4.0905 s.</summary>
    public const double DegreesPerHour = 360 * 3600 / 86164.0905;

    /// <summary>Arc of a star as seen from here: the sky's turn × cos of the declination.</summary>
    /// <param name="declination">−90° to 90°; 0 for the equator of the sky.</param>
    /// <param name="time">Up to 24 h.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static Angle OfStar(Angle declination, Duration time)
    {
        Guard.Within(declination.Degrees, -90, 90, "the declination", "°");
        var hours = Guard.Within(time.Seconds, 0, 86_400, "the exposure", "s") / 3600;
        return Angle.FromDegrees(DegreesPerHour * hours * Math.Cos(declination.Radians));
    }

    /// <summary>Angle between where the sun stands at the beginning and at the end, as seen through the air.</summary>
    /// <param name="from">The beginning, 1950 to 2050.</param>
    /// <param name="time">Up to six hours.</param>
    /// <param name="place">The observer.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static Angle OfSun(DateTimeOffset from, Duration time, GeographicPosition place)
        => Between(Sun.At(from, place), Sun.At(After(from, time), place));

    /// <summary>As <see cref="OfSun"/> for the moon.</summary>
    public static Angle OfMoon(DateTimeOffset from, Duration time, GeographicPosition place)
        => Between(Moon.At(from, place), Moon.At(After(from, time), place));

    /// <summary>Angle between two directions of the sky, as seen.</summary>
    public static Angle Between(SkyPosition a, SkyPosition b)
    {
        var (heightA, heightB) = (a.Elevation.Radians, b.Elevation.Radians);
        var turn = b.Azimuth.Radians - a.Azimuth.Radians;

        // Haversines keep their digits where the angle is small.
        var half = Math.Pow(Math.Sin((heightB - heightA) / 2), 2) + (Math.Cos(heightA) * Math.Cos(heightB) * Math.Pow(Math.Sin(turn / 2), 2));
        return Angle.FromRadians(2 * Math.Asin(Math.Sqrt(Math.Clamp(half, 0, 1))));
    }

    private static DateTimeOffset After(DateTimeOffset from, Duration time)
        => from.AddSeconds(Guard.Within(time.Seconds, 0, 6 * 3600, "the exposure", "s"));
}
