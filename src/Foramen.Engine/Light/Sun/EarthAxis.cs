namespace Foramen.Engine.Light;

/// <summary>
/// How the Earth's axis and rotation stand at an instant: nutation by its four largest terms (good to 0.5″), mean obliquity, and apparent
/// sidereal time. J. Meeus, Astronomical Algorithms, 2nd ed. (1998), chapters 12 and 22.
/// </summary>
internal readonly record struct EarthAxis
{
    private const double Radian = Math.PI / 180;

    private EarthAxis(double nutationInLongitude, double obliquity)
    {
        NutationInLongitude = nutationInLongitude;
        Obliquity = obliquity;
    }

    /// <summary>Δψ, radians.</summary>
    public double NutationInLongitude { get; }

    /// <summary>True obliquity of the ecliptic, radians.</summary>
    public double Obliquity { get; }

    /// <summary>The axis at a time in Julian centuries of terrestrial time from J2000.0.</summary>
    public static EarthAxis At(double centuries)
    {
        var t = centuries;
        var node = (125.04452 - (1934.136261 * t)) * Radian;
        var sun = (280.4665 + (36000.7698 * t)) * Radian;
        var moon = (218.3165 + (481267.8813 * t)) * Radian;
        var longitude = (-17.20 * Math.Sin(node)) - (1.32 * Math.Sin(2 * sun)) - (0.23 * Math.Sin(2 * moon)) + (0.21 * Math.Sin(2 * node));
        var obliquity = (9.20 * Math.Cos(node)) + (0.57 * Math.Cos(2 * sun)) + (0.10 * Math.Cos(2 * moon)) - (0.09 * Math.Cos(2 * node));
        var mean = 84381.448 - (t * (46.8150 + (t * (0.00059 - (t * 0.001813)))));
        return new EarthAxis(longitude / 3600 * Radian, (mean + obliquity) / 3600 * Radian);
    }

    /// <summary>Mean sidereal time at Greenwich, radians, not reduced to one turn.</summary>
    public static double MeanSiderealTime(double daysUniversal)
    {
        var t = daysUniversal / 36525;
        return (280.46061837 + (360.98564736629 * daysUniversal) + (t * t * (0.000387933 - (t / 38710000)))) * Radian;
    }

    /// <summary>What nutation adds to sidereal time, radians.</summary>
    public double EquationOfEquinoxes => NutationInLongitude * Math.Cos(Obliquity);

    /// <summary>A place by ecliptic longitude and latitude (radians, of date) and distance, as a vector along the equator of date.</summary>
    public EquatorialVector FromEcliptic(double longitude, double latitude, double distance)
    {
        var (sinLongitude, cosLongitude) = Math.SinCos(longitude);
        var (sinLatitude, cosLatitude) = Math.SinCos(latitude);
        var (sinTilt, cosTilt) = Math.SinCos(Obliquity);
        return new EquatorialVector(
            distance * cosLatitude * cosLongitude,
            distance * ((cosLatitude * sinLongitude * cosTilt) - (sinLatitude * sinTilt)),
            distance * ((cosLatitude * sinLongitude * sinTilt) + (sinLatitude * cosTilt)));
    }
}
