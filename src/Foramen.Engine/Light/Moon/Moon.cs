using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>Where the Moon stands and how much light it gives, 1950 to 2050; position to better than 0.1°.</summary>
public static class Moon
{
    /// <summary>Mean distance, km.</summary>
    public const double MeanDistanceKilometres = 384400;

    /// <summary>Moonlight lost in clear air for each air mass, magnitudes (K. Krisciunas and B. Schaefer, PASP 103, 1033, 1991).</summary>
    public const double ExtinctionMagnitudes = 0.172;

    private const double RadiusKilometres = 1737.4;

    private const double LuxPerFootcandle = 10.76391;

    private const double Degree = 180 / Math.PI;

    /// <summary>Where the Moon's middle stands, parallax included.</summary>
    /// <param name="instant">1950 to 2050.</param>
    /// <param name="place">The observer.</param>
    /// <param name="air">The air there; usual air for the height if left out.</param>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static SkyPosition At(DateTimeOffset instant, GeographicPosition place, Atmosphere? air = null)
        => Sight(new Observer(place), AstronomicalTime.From(instant), out _).Seen(air ?? Atmosphere.At(place));

    /// <summary>Distance from the Earth's middle to the Moon's.</summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static Length Distance(DateTimeOffset instant)
        => Length.FromMetres(MoonOrbit.At(AstronomicalTime.From(instant).Centuries).Distance * 1000);

    /// <summary>How much of the Moon is lit. (Meeus, chapter 48.)</summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static MoonPhase PhaseAt(DateTimeOffset instant)
    {
        var time = AstronomicalTime.From(instant);
        var (longitude, latitude, distance) = MoonOrbit.At(time.Centuries);
        var (sunLongitude, _, sunDistance) = EarthOrbit.At(time.Centuries);
        var ahead = longitude - (sunLongitude + Math.PI - (Sun.AberrationRadians / sunDistance));
        var separation = Math.Acos(Math.Cos(latitude) * Math.Cos(ahead));
        var sunKilometres = sunDistance * Sun.AstronomicalUnitKilometres;
        var phase = Math.Atan2(sunKilometres * Math.Sin(separation), distance - (sunKilometres * Math.Cos(separation)));
        var elongation = ahead * Degree % 360;
        return new MoonPhase((1 + Math.Cos(phase)) / 2, Angle.FromRadians(phase), Angle.FromDegrees(elongation < 0 ? elongation + 360 : elongation));
    }

    /// <summary>
    /// Moonlight on level ground under a clear sky: the Moon's magnitude by phase (Krisciunas and Schaefer 1991, equation 20), its distance,
    /// extinction by the air mass of F. Kasten and A. Young (Applied Optics 28, 4735, 1989), and the sine of its elevation. Within some 20 %
    /// in clear air; light scattered by the sky is not in it. Zero when the Moon is down.
    /// </summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static Illuminance LightOnGround(DateTimeOffset instant, GeographicPosition place)
    {
        var position = At(instant, place);
        if (position.Elevation.Degrees <= 0)
        {
            return Illuminance.FromLux(0);
        }

        var through = Math.Pow(10, -0.4 * ExtinctionMagnitudes * AirMass.At(position.Elevation));
        return Illuminance.FromLux(AboveAirLux(instant) * through * Math.Sin(position.Elevation.Radians));
    }

    /// <summary>Moonlight on a surface square to it above the air, lx: magnitude by phase (Krisciunas and Schaefer 1991, equation 20) and distance.</summary>
    internal static double AboveAirLux(DateTimeOffset instant)
    {
        var phase = PhaseAt(instant).PhaseAngle.Degrees;
        var nearer = MeanDistanceKilometres * 1000 / Distance(instant).Metres;
        return LuxPerFootcandle * Math.Pow(10, -0.4 * (3.84 + (0.026 * phase) + (4e-9 * phase * phase * phase * phase))) * nearer * nearer;
    }

    /// <summary>Height of the Moon's upper edge over the horizon of an almanac (34′ of refraction), degrees.</summary>
    internal static double UpperEdgeDegrees(Observer observer, double daysUniversal)
    {
        var sight = Sight(observer, AstronomicalTime.FromDays(daysUniversal), out var distance);
        return sight.TrueElevationDegrees + (34.0 / 60) + (Math.Asin(RadiusKilometres / distance) * Degree);
    }

    /// <summary>The Moon from the Earth's middle, km along the true equator of date.</summary>
    internal static EquatorialVector Vector(double centuries, EarthAxis axis)
    {
        var (longitude, latitude, distance) = MoonOrbit.At(centuries);
        return axis.FromEcliptic(longitude + axis.NutationInLongitude, latitude, distance);
    }

    private static HorizonVector Sight(Observer observer, AstronomicalTime time, out double distance)
    {
        var axis = EarthAxis.At(time.Centuries);
        var body = Vector(time.Centuries, axis);
        distance = body.Distance;
        return observer.Sight(body, EarthAxis.MeanSiderealTime(time.DaysUniversal) + axis.EquationOfEquinoxes);
    }
}
