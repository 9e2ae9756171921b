using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// The colour of the light as a user would put it. The temperatures of shade and low sun are typical values
/// (common practice, no source); D55 and D65 are CIE's.
/// </summary>
/// <param name="Name">As a user would say it.</param>
/// <param name="Temperature">Correlated colour temperature.</param>
/// <param name="Kind">Where the spectrum is taken from.</param>
public sealed record LightColour(string Name, ColourTemperature Temperature, LightKind Kind)
{
    private static readonly LightColour[] List =
    [
        new("lamp", ColourTemperature.FromKelvin(3000), LightKind.Radiator),
        new("low sun", ColourTemperature.FromKelvin(3200), LightKind.Radiator),
        new("noon", Light.Daylight.D55, LightKind.Daylight),
        new("overcast", Light.Daylight.D65, LightKind.Daylight),
        new("open shade", ColourTemperature.FromKelvin(10000), LightKind.Daylight),
        new("blue shade", ColourTemperature.FromKelvin(12000), LightKind.Daylight),
    ];

    /// <summary>The lights known by name, from warm to cold.</summary>
    public static IReadOnlyList<LightColour> Known { get; } = List.AsReadOnly();

    /// <summary>An incandescent lamp, 3000 K.</summary>
    public static LightColour Lamp => List[0];

    /// <summary>A low sun, 3200 K.</summary>
    public static LightColour LowSun => List[1];

    /// <summary>Sun and sky around noon, D55.</summary>
    public static LightColour Noon => List[2];

    /// <summary>An overcast sky, D65.</summary>
    public static LightColour Overcast => List[3];

    /// <summary>Open shade, 10 000 K.</summary>
    public static LightColour OpenShade => List[4];

    /// <summary>Deep shade under a blue sky, 12 000 K.</summary>
    public static LightColour BlueShade => List[5];

    /// <summary>Light of a measured colour temperature: a full radiator below 4000 K, daylight from there on. At the change daylight holds less
    /// violet, so the actinic factor steps down by up to a fifth of a stop there.</summary>
    /// <exception cref="RefusalException">Below 1500 K or above 25 000 K.</exception>
    public static LightColour FromTemperature(ColourTemperature temperature)
    {
        var kelvin = Guard.Within(temperature.Kelvin, 1500, Light.Daylight.HighestKelvin, "the colour temperature of the light", "K");
        return new LightColour(
            string.Create(CultureInfo.InvariantCulture, $"{kelvin:0} K"),
            temperature,
            kelvin < Light.Daylight.LowestKelvin ? LightKind.Radiator : LightKind.Daylight);
    }

    /// <summary>A light by its name, whatever its letters' case, or by a temperature such as <c>5600 K</c>.</summary>
    /// <exception cref="RefusalException">Not a known name; the message lists those known.</exception>
    public static LightColour Find(string text)
    {
        var name = (text ?? "").Trim();
        var known = Array.Find(List, colour => string.Equals(colour.Name, name, StringComparison.OrdinalIgnoreCase));
        if (known is not null)
        {
            return known;
        }

        if (name.EndsWith('K')
            && double.TryParse(name.AsSpan(0, name.Length - 1).Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var kelvin))
        {
            return FromTemperature(ColourTemperature.FromKelvin(kelvin));
        }

        throw new RefusalException(
            $"The light \"{text}\" is not known; say one of {string.Join(", ", List.Select(colour => colour.Name))}, or a temperature such as 5600 K.");
    }

    /// <summary>The light's spectrum.</summary>
    public Spectrum ToSpectrum() => Kind == LightKind.Radiator ? Planckian.OfTemperature(Temperature) : Light.Daylight.OfTemperature(Temperature);
}
