using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// The full radiator: Planck's law with c2 = 0.014388 m K (CIE 15 since 1990). A tungsten lamp follows it closely in the visible;
/// fluorescent tubes, LEDs and sodium lamps do not.
/// </summary>
public static class Planckian
{
    /// <summary>The second radiation constant, m K.</summary>
    public const double SecondRadiationConstant = 0.014388;

    private const double ReferenceMetres = 560e-9;

    /// <summary>The spectrum of a full radiator, scaled to 100 at 560 nm.</summary>
    public static Spectrum OfTemperature(ColourTemperature temperature)
        => Spectrum.FromFunction(
            $"full radiator of {temperature.Kelvin:0} K",
            nanometres => 100 * RelativePower(nanometres * 1e-9, temperature.Kelvin) / RelativePower(ReferenceMetres, temperature.Kelvin));

    private static double RelativePower(double metres, double kelvin)
        => Math.Pow(metres / ReferenceMetres, -5) / (Math.Exp(SecondRadiationConstant / (metres * kelvin)) - 1);
}
