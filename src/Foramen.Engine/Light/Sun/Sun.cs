using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Where the Sun stands, 1950 to 2050, to 0.01°; near the horizon refraction of the real air may differ by more. The Earth's orbit by
/// VSOP87, aberration, nutation, sidereal time and parallax as in I. Reda and A. Andreas, Solar Energy 76, 577 (2004).
/// </summary>
public static class Sun
{
    /// <summary>Kilometres in an astronomical unit.</summary>
    internal const double AstronomicalUnitKilometres = 149597870.7;

    /// <summary>How far back the Sun seems to stand because of the Earth's motion, at one astronomical unit.</summary>
    internal const double AberrationRadians = 20.4898 / 3600 * (Math.PI / 180);

    /// <summary>Where the Sun's middle stands.</summary>
    /// <param name="instant">1950 to 2050.</param>
    /// <param name="place">The observer.</param>
    /// <param name="air">The air there; usual air for the height if left out.</param>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static SkyPosition At(DateTimeOffset instant, GeographicPosition place, Atmosphere? air = null)
    {
        var time = AstronomicalTime.From(instant);
        var axis = EarthAxis.At(time.Centuries);
        return new Observer(place)
            .Sight(Vector(time.Centuries, axis), EarthAxis.MeanSiderealTime(time.DaysUniversal) + axis.EquationOfEquinoxes)
            .Seen(air ?? Atmosphere.At(place));
    }

    /// <summary>Declination of the Sun as seen from the Earth's middle.</summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static Angle Declination(DateTimeOffset instant)
    {
        var time = AstronomicalTime.From(instant);
        return Angle.FromRadians(Vector(time.Centuries, EarthAxis.At(time.Centuries)).Declination);
    }

    /// <summary>Distance of the Sun in astronomical units, 0.983 to 1.017; its light goes with the inverse square.</summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static double DistanceAstronomicalUnits(DateTimeOffset instant) => EarthOrbit.At(AstronomicalTime.From(instant).Centuries).Distance;

    /// <summary>Equation of time, minutes, −15 to 17: how far a sundial is ahead of the mean clock. (Meeus, chapter 28.)</summary>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static double EquationOfTimeMinutes(DateTimeOffset instant)
    {
        var time = AstronomicalTime.From(instant);
        var axis = EarthAxis.At(time.Centuries);
        var t = time.Centuries / 10;
        var meanLongitude = 280.4664567 + (t * (360007.6982779 + (t * (0.03032028 + (t / 49931)))));
        var rightAscension = Vector(time.Centuries, axis).RightAscension * (180 / Math.PI);
        var degrees = meanLongitude - 0.0057183 - rightAscension + (axis.EquationOfEquinoxes * (180 / Math.PI));
        return 4 * Math.IEEERemainder(degrees, 360);
    }

    /// <summary>The Sun from the Earth's middle, apparent, km along the true equator of date.</summary>
    internal static EquatorialVector Vector(double centuries, EarthAxis axis)
    {
        var (longitude, latitude, distance) = EarthOrbit.At(centuries);
        return axis.FromEcliptic(
            longitude + Math.PI + axis.NutationInLongitude - (AberrationRadians / distance),
            -latitude,
            distance * AstronomicalUnitKilometres);
    }
}
