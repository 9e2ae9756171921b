using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// How bright each direction of the sky is against the zenith: the CIE Standard General Sky, ISO 15469:2004 / CIE S 011, fifteen types by a
/// gradation 1 + a·exp(b/cos Z) and an indicatrix 1 + c·(exp(dχ) − exp(dπ/2)) + e·cos²χ around the sun, and as number 16 the traditional
/// overcast sky (1 + 2 sin γ)/3 of P. Moon and D. E. Spencer (1942). The sun's disc is not in it, nor any single cloud. Immutable.
/// </summary>
public sealed record CieGeneralSky
{
    // a, b, c, d, e of table 1 of the standard (from memory), and what the types are called there.
    private static readonly CieGeneralSky[] List =
    [
        new(1, "overcast, much darker to the horizon", 4.0, -0.70, 0, -1.0, 0),
        new(2, "overcast, much darker to the horizon, a little brighter to the sun", 4.0, -0.70, 2, -1.5, 0.15),
        new(3, "overcast, rather darker to the horizon", 1.1, -0.8, 0, -1.0, 0),
        new(4, "overcast, rather darker to the horizon, a little brighter to the sun", 1.1, -0.8, 2, -1.5, 0.15),
        new(5, "evenly bright", 0, -1.0, 0, -1.0, 0),
        new(6, "partly cloudy, even, a little brighter to the sun", 0, -1.0, 2, -1.5, 0.15),
        new(7, "partly cloudy, even, brighter around the sun", 0, -1.0, 5, -2.5, 0.30),
        new(8, "partly cloudy, even, with a clear aureole", 0, -1.0, 10, -3.0, 0.45),
        new(9, "partly cloudy, the sun hidden", -1.0, -0.55, 2, -1.5, 0.15),
        new(10, "partly cloudy, brighter around the sun", -1.0, -0.55, 5, -2.5, 0.30),
        new(11, "white-blue with a clear aureole", -1.0, -0.55, 10, -3.0, 0.45),
        new(12, "clear, clean air", -1.0, -0.32, 10, -3.0, 0.45),
        new(13, "clear, polluted air", -1.0, -0.32, 16, -3.0, 0.30),
        new(14, "cloudless, turbid, wide aureole", -1.0, -0.15, 16, -3.0, 0.30),
        new(15, "white-blue, turbid, wide aureole", -1.0, -0.15, 24, -2.8, 0.15),
        new(16, "traditional overcast", 2, 0, 0, -1.0, 0),
    ];

    private readonly double a, b, c, d, e;

    private CieGeneralSky(int number, string name, double a, double b, double c, double d, double e)
    {
        (Number, Name, this.a, this.b, this.c, this.d, this.e) = (number, name, a, b, c, d, e);
    }

    /// <summary>All sixteen, by number.</summary>
    public static IReadOnlyList<CieGeneralSky> Types { get; } = List.AsReadOnly();

    /// <summary>Type 12, the standard's clear sky.</summary>
    public static CieGeneralSky Clear => List[11];

    /// <summary>Type 7, for a partly cloudy or hazy sky on average.</summary>
    public static CieGeneralSky PartlyCloudy => List[6];

    /// <summary>Number 16, the traditional overcast sky.</summary>
    public static CieGeneralSky TraditionalOvercast => List[15];

    /// <summary>Number in the standard, 1 to 16.</summary>
    public int Number { get; }

    /// <summary>What it looks like.</summary>
    public string Name { get; }

    /// <summary>Whether it looks the same all around, wherever the sun is.</summary>
    public bool IsSymmetric => c == 0 && e == 0;

    /// <summary>A type by its number.</summary>
    /// <exception cref="RefusalException">Not 1 to 16.</exception>
    public static CieGeneralSky OfNumber(int number)
        => number >= 1 && number <= List.Length
            ? List[number - 1]
            : throw new RefusalException(string.Create(CultureInfo.InvariantCulture, $"The sky type is {number}; it should be 1 to 16."));

    /// <summary>Luminance of a direction over that of the zenith.</summary>
    /// <param name="elevation">Of the direction, 0° to 90°.</param>
    /// <param name="fromSun">How far its azimuth is from the sun's.</param>
    /// <param name="sunElevation">Of the sun (or moon), 0° to 90°.</param>
    /// <exception cref="RefusalException">A direction or a sun below the horizon.</exception>
    public double RelativeLuminance(Angle elevation, Angle fromSun, Angle sunElevation)
    {
        Guard.Within(elevation.Degrees, 0, 90, "the direction's elevation", "°");
        Guard.Within(sunElevation.Degrees, 0, 90, "the sun's elevation", "°");
        return Relative(Math.Sin(elevation.Radians), Math.Cos(fromSun.Radians), Math.Sin(sunElevation.Radians));
    }

    /// <summary>The same by sines of the elevations and the cosine of the difference of azimuth.</summary>
    internal double Relative(double sin, double cosFromSun, double sinSun)
    {
        if (Number == 16)
        {
            return (1 + (2 * sin)) / 3;
        }

        var gradation = Gradation(sin) / Gradation(1);
        if (IsSymmetric)
        {
            return gradation;
        }

        var cosDistance = (sin * sinSun) + (Math.Sqrt(Math.Max(0, (1 - (sin * sin)) * (1 - (sinSun * sinSun)))) * cosFromSun);
        return gradation * Indicatrix(cosDistance) / Indicatrix(sinSun);
    }

    private double Gradation(double sin) => sin <= 0 ? 1 : 1 + (a * Math.Exp(b / sin));

    private double Indicatrix(double cosDistance)
    {
        var cos = Math.Clamp(cosDistance, -1, 1);
        return 1 + (c * (Math.Exp(d * Math.Acos(cos)) - Math.Exp(d * Math.PI / 2))) + (e * cos * cos);
    }
}
