using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// What is in the sky, as the handbook's daylight availability model has it: direct normal light E0·exp(−c·m) and light of the sky on level
/// ground A + B·sin^C h in klx. Illuminating Engineering Society, Lighting Handbook and RP-21 (1984), coefficients from memory; the air
/// mass m is Kasten and Young's instead of 1/sin h. Immutable.
/// </summary>
/// <remarks>
/// The three skies are averages; a sky of the moment may differ by what <see cref="SkySpread"/> says, and under broken cloud the sun comes and goes,
/// which an average cannot show. Fitted near sea level.
/// </remarks>
public sealed record SkyCover
{
    /// <summary>Elevation from which down the handbook's formula, made for working hours, gives way to the curve of twilight. They meet it again, to a tenth, at the horizon.</summary>
    private const double LowestDegrees = 5;

    private static readonly SkyCover[] List =
    [
        new("clear", 0.21, 0.8, 15.5, 0.5, CieGeneralSky.Clear, 0.40),
        new("hazy", 0.80, 0.3, 45.0, 1.0, CieGeneralSky.PartlyCloudy, 0.60),
        new("overcast", null, 0.3, 21.0, 1.0, CieGeneralSky.TraditionalOvercast, 0.80),
    ];

    private SkyCover(string name, double? extinction, double a, double b, double c, CieGeneralSky sky, double skySpread)
    {
        (Name, Extinction, Sky, SkySpread) = (name, extinction, sky, Stops.FromValue(skySpread));
        (LeastKilolux, RangeKilolux, Exponent) = (a, b, c);
    }

    /// <summary>No clouds.</summary>
    public static SkyCover Clear => List[0];

    /// <summary>Haze or thin and scattered cloud, with a weak sun.</summary>
    public static SkyCover Hazy => List[1];

    /// <summary>No sun to be seen.</summary>
    public static SkyCover Overcast => List[2];

    /// <summary>As a user would say it.</summary>
    public string Name { get; }

    /// <summary>c, extinction for one air mass; null where the sun does not come through.</summary>
    public double? Extinction { get; }

    /// <summary>How its brightness is spread.</summary>
    public CieGeneralSky Sky { get; private init; }

    /// <summary>Spread of the sky's light at a moment against the average, one standard deviation, stops (an assumption; no source with standard deviations is known to us).</summary>
    public Stops SkySpread { get; }

    internal double LeastKilolux { get; }

    internal double RangeKilolux { get; }

    internal double Exponent { get; }

    /// <summary>A sky by its name; "partly cloudy" is hazy.</summary>
    /// <exception cref="RefusalException">Not a known name.</exception>
    public static SkyCover Find(string text)
    {
        var name = (text ?? "").Trim();
        var known = string.Equals(name, "partly cloudy", StringComparison.OrdinalIgnoreCase) ? Hazy
            : Array.Find(List, sky => string.Equals(sky.Name, name, StringComparison.OrdinalIgnoreCase));
        return known ?? throw new RefusalException($"The sky \"{text}\" is not known; say clear, hazy or overcast.");
    }

    /// <summary>The same light spread over the sky by another of the standard's types.</summary>
    public SkyCover SpreadAs(CieGeneralSky sky) => this with { Sky = sky };

    /// <summary>Direct light on a surface square to it.</summary>
    /// <param name="elevation">Elevation of the sun as seen, degrees.</param>
    /// <param name="aboveAir">Light above the air, lx.</param>
    internal double DirectNormalLux(double elevation, double aboveAir)
        => Extinction is not { } c || elevation <= 0 ? 0 : aboveAir * Math.Exp(-c * AirMass.OfDegrees(Math.Min(90, elevation)));

    /// <summary>Light of the sky on level ground, lx; from <see cref="LowestDegrees"/> down it falls as the published curve of twilight does.</summary>
    /// <param name="trueElevation">Elevation of the sun without air, degrees.</param>
    /// <param name="aboveAir">Light above the air, lx.</param>
    internal double DiffuseHorizontalLux(double trueElevation, double aboveAir)
    {
        var kilolux = LeastKilolux + (RangeKilolux * Math.Pow(Math.Sin(Math.Max(LowestDegrees, trueElevation) * (Math.PI / 180)), Exponent));
        if (trueElevation < LowestDegrees)
        {
            kilolux *= Twilight.Between(LowestDegrees, trueElevation);
        }

        return kilolux * 1000 * aboveAir / SkyLight.SolarConstantLux;
    }
}
