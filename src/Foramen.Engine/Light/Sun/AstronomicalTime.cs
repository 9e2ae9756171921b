using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// An instant as astronomers count it. UT1 is taken as UTC; they are kept within 0.9 s of each other, which is 0.004° of the sky's turning.
/// </summary>
internal readonly record struct AstronomicalTime
{
    private static readonly DateTimeOffset J2000 = new(2000, 1, 1, 12, 0, 0, TimeSpan.Zero);

    private AstronomicalTime(double daysUniversal, double deltaSeconds)
    {
        DaysUniversal = daysUniversal;
        DaysTerrestrial = daysUniversal + (deltaSeconds / 86400);
    }

    /// <summary>Days of universal time since 2000-01-01 12:00 UT (Julian date less 2451545.0).</summary>
    public double DaysUniversal { get; }

    /// <summary>Days of terrestrial time since the same count.</summary>
    public double DaysTerrestrial { get; }

    /// <summary>Julian centuries of terrestrial time since J2000.0.</summary>
    public double Centuries => DaysTerrestrial / 36525;

    /// <summary>From an instant.</summary>
    /// <exception cref="RefusalException">Before 1950 or after 2050.</exception>
    public static AstronomicalTime From(DateTimeOffset instant)
    {
        if (instant.UtcDateTime.Year is < 1950 or > 2050)
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture,
                $"The date is {instant.UtcDateTime:yyyy-MM-dd}; sun and moon are computed for the years 1950 to 2050."));
        }

        return FromDays((instant - J2000).TotalDays);
    }

    /// <summary>From days of universal time since 2000-01-01 12:00.</summary>
    public static AstronomicalTime FromDays(double daysUniversal) => new(daysUniversal, DeltaSeconds(2000 + (daysUniversal / 365.25)));

    /// <summary>
    /// Terrestrial less universal time, s, for 1941 to 2050: polynomials of F. Espenak and J. Meeus, Five Millennium Canon of Solar Eclipses
    /// (NASA/TP-2006-214141). Beyond 2020 they run some seconds ahead of what the Earth did; the Sun moves 0.00001° in a second.
    /// </summary>
    internal static double DeltaSeconds(double year)
    {
        if (year < 1961)
        {
            var t = year - 1950;
            return 29.07 + (t * (0.407 + (t * ((-1 / 233.0) + (t / 2547)))));
        }

        if (year < 1986)
        {
            var t = year - 1975;
            return 45.45 + (t * (1.067 + (t * ((-1 / 260.0) - (t / 718)))));
        }

        var u = year - 2000;
        return year < 2005
            ? 63.86 + (u * (0.3345 + (u * (-0.060374 + (u * (0.0017275 + (u * (0.000651814 + (u * 0.00002373599)))))))))
            : 62.92 + (u * (0.32217 + (u * 0.005589)));
    }
}
