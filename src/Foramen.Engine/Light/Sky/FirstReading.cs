using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// A luminance from place, time and sky alone, for a first exposure without any meter: an evenly scattering surface in the open. Its spread is part of the
/// answer; a reading by hand is always better. Immutable.
/// </summary>
/// <param name="Light">The light on the surface, by where it comes from.</param>
/// <param name="Luminance">ρE/π.</param>
/// <param name="Spread">One standard deviation, stops.</param>
/// <param name="Colour">The colour of the light to plan with.</param>
public sealed record FirstReading(FacadeLight Light, Luminance Luminance, Stops Spread, LightColour Colour)
{
    /// <summary>Spread of a reflectance taken from a list or guessed by eye, stops (an assumption: from two thirds to one and a half times).</summary>
    public static Stops UsualReflectanceSpread { get; } = Stops.FromValue(0.3);

    // How far the clearness of the air may be from the average sky's, as a part of the extinction; an assumption.
    private const double ExtinctionSpread = 0.4;

    private const double SourceSpread = 0.2;

    private const double TwilightSpread = 1.0;

    private const double LowSunDegrees = 12;

    /// <summary>The reading.</summary>
    /// <param name="sky">The light of the moment.</param>
    /// <param name="facade">The surface.</param>
    /// <param name="reflectance">Of the surface: white paint 0.8, pale concrete 0.4, brick 0.2, mid-grey 0.18, dark foliage 0.06 (common practice, no source).</param>
    /// <param name="reflectanceSpread">How well that is known, stops; 0.3 if left out.</param>
    /// <param name="shade">What may hide sun and moon from the surface.</param>
    public static FirstReading Of(SkyLight sky, Facade facade, Reflectance reflectance, Stops? reflectanceSpread = null, IReadOnlyList<Obstacle>? shade = null)
    {
        var light = sky.On(facade, shade);
        var total = light.Total.Lux;
        var directPart = total > 0 ? light.Direct.Lux / total : 0;
        var source = sky.MoonPosition ?? sky.SunPosition;

        // Direct light: the haze of the moment times the air that it comes through. Sky light: the cover's own spread, more at dusk and at night.
        var direct = sky.Cover.Extinction is { } c && source.Elevation.Degrees > 0
            ? Stops.RootSumSquare(
                Stops.FromValue(SourceSpread),
                Stops.FromValue(Math.Min(3, ExtinctionSpread * c * AirMass.At(source.Elevation) / Math.Log(2))))
            : Stops.Zero;
        var dusk = Math.Clamp(-sky.SunPosition.TrueElevation.Degrees / 6, 0, 1);
        var diffuse = Stops.RootSumSquare(sky.Cover.SkySpread, Stops.FromValue(TwilightSpread * dusk));
        var spread = Stops.RootSumSquare(
            Stops.FromValue(directPart * direct.Value),
            Stops.FromValue((1 - directPart) * diffuse.Value),
            reflectanceSpread ?? UsualReflectanceSpread);
        return new FirstReading(light, light.LuminanceOf(reflectance), spread, ColourOf(sky, directPart));
    }

    // A rough choice by what most of the light comes from; temperatures are those of LightColour.
    private static LightColour ColourOf(SkyLight sky, double directPart)
        => sky.Cover.Extinction is null ? LightColour.Overcast
            : sky.MoonPosition is not null && directPart > 0.3 ? LightColour.Noon
            : directPart > 0.4 ? (sky.SunPosition.Elevation.Degrees < LowSunDegrees ? LightColour.LowSun : LightColour.Noon)
            : sky.SunPosition.TrueElevation.Degrees < 0 ? LightColour.BlueShade
            : sky.Cover == SkyCover.Clear ? LightColour.OpenShade
            : LightColour.Overcast;
}
