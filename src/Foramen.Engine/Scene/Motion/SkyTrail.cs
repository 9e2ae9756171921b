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
}
