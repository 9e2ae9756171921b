using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>Light on a surface at night from what is there: sky, moon and lamps add. Immutable.</summary>
public static class NightGround
{
    /// <summary>Luminance of a natural moonless night sky overhead, 22 magnitudes to the square second of arc (from memory; with the usual 10.8·10⁴·10^(−0.4 m)).</summary>
    public static Luminance NaturalSky => GlowOf(22);

    /// <summary>Luminance of a sky overhead given as astronomers do: L = 10.8·10⁴·10^(−0.4·m) cd/m², m magnitudes to the square second of arc (conversion from memory).</summary>
    /// <param name="magnitudes">14 (a lit city) to 22.5 (none).</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Luminance GlowOf(double magnitudes) => Luminance.FromCandelasPerSquareMetre(
        10.8e4 * Math.Pow(10, -0.4 * Guard.Within(magnitudes, 14, 22.5, "the sky’s brightness", "magnitudes to the square second of arc")));

    /// <summary>Light on level ground under an even glow: π·L.</summary>
    public static Illuminance UnderGlow(Luminance sky) => Illuminance.FromLux(Math.PI * sky.CandelasPerSquareMetre);

    /// <summary>Light of a lamp on a surface, by the photometric distance law I·cos ε/r².</summary>
    /// <param name="lamp">Towards the surface.</param>
    /// <param name="distance">At least 10 cm.</param>
    /// <param name="incidence">From the surface's normal, 0° to 90°.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static Illuminance FromLamp(LuminousIntensity lamp, Length distance, Angle incidence)
    {
        var metres = Guard.Within(distance.Metres, 0.1, Length.Max, "the distance to the lamp", "m");
        Guard.Within(incidence.Degrees, 0, 90, "the angle of incidence", "°");
        return Illuminance.FromLux(Math.Min(Illuminance.Max, lamp.Candelas * Math.Max(0, Math.Cos(incidence.Radians)) / (metres * metres)));
    }

    /// <summary>Light of all together.</summary>
    public static Illuminance Sum(params ReadOnlySpan<Illuminance> lights)
    {
        var lux = 0.0;
        foreach (var light in lights)
        {
            lux += light.Lux;
        }

        return Illuminance.FromLux(lux);
    }
}
