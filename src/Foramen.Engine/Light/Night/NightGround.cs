using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>The glow of the sky at night.</summary>
public static class NightGround
{
    /// <summary>Luminance of a natural moonless night sky overhead, 22 magnitudes to the square second of arc (from memory; with the usual 10.8·10⁴·10^(−0.4 m)).</summary>
    public static Luminance NaturalSky => GlowOf(22);

    /// <summary>Luminance of a sky overhead given as astronomers do: L = 10.8·10⁴·10^(−0.4·m) cd/m², m magnitudes to the square second of arc (conversion from memory).</summary>
    /// <param name="magnitudes">14 (a lit city) to 22.5 (none).</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Luminance GlowOf(double magnitudes) => Luminance.FromCandelasPerSquareMetre(
        10.8e4 * Math.Pow(10, -0.4 * Guard.Within(magnitudes, 14, 22.5, "the sky’s brightness", "magnitudes to the square second of arc")));
}
