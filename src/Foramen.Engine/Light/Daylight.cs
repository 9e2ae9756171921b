using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Daylight of a given correlated colour temperature, 4000 to 25 000 K, as CIE 15 computes it from three components
/// (D. B. Judd, D. L. MacAdam, G. Wyszecki, J. Opt. Soc. Am. 54, 1031, 1964): S = S0 + M1·S1 + M2·S2. A phase of daylight on the whole;
/// a blue sky alone, or light through leaves, lies off this line.
/// </summary>
public static class Daylight
{
    /// <summary>Lowest temperature the formulas hold for, K.</summary>
    public const double LowestKelvin = 4000;

    /// <summary>Highest temperature the formulas hold for, K.</summary>
    public const double HighestKelvin = 25000;

    private static readonly Lazy<SpectralTable> Components = new(() => SpectralTable.Read("cie_daylight_components.csv"));

    // The illuminants were named when c2 was 0.014380 m K; on today's scale each is 1.4388/1.4380 hotter than its name (CIE 15).
    private const double ScaleChange = 1.4388 / 1.4380;

    /// <summary>D50, 5003 K.</summary>
    public static ColourTemperature D50 { get; } = ColourTemperature.FromKelvin(5000 * ScaleChange);

    /// <summary>D55, 5503 K: sun and sky together around noon.</summary>
    public static ColourTemperature D55 { get; } = ColourTemperature.FromKelvin(5500 * ScaleChange);

    /// <summary>D65, 6504 K: average daylight, near that of an overcast sky.</summary>
    public static ColourTemperature D65 { get; } = ColourTemperature.FromKelvin(6500 * ScaleChange);

    /// <summary>D75, 7504 K: north sky daylight.</summary>
    public static ColourTemperature D75 { get; } = ColourTemperature.FromKelvin(7500 * ScaleChange);

    /// <summary>The spectrum of this daylight, scaled to 100 at 560 nm.</summary>
    /// <exception cref="RefusalException">The temperature is not 4000 to 25 000 K.</exception>
    public static Spectrum OfTemperature(ColourTemperature temperature)
    {
        var (x, y) = ChromaticityOf(temperature);
        var denominator = 0.0241 + (0.2562 * x) - (0.7341 * y);

        // CIE 15 rounds both factors to three decimals; its published tables of D50, D55, D65 and D75 come out only so.
        var m1 = Math.Round((-1.3515 - (1.7703 * x) + (5.9114 * y)) / denominator, 3);
        var m2 = Math.Round((0.0300 - (31.4424 * x) + (30.0717 * y)) / denominator, 3);
        var table = Components.Value;
        return Spectrum.FromFunction($"daylight of {temperature.Kelvin:0} K", wavelength =>
        {
            // Beyond the table (780 nm) the last row is held: neither the eye nor paper sees anything there.
            var nanometres = Math.Min((int)wavelength, table.LastNanometres);
            return Math.Max(0, table.At(nanometres, 0) + (m1 * table.At(nanometres, 1)) + (m2 * table.At(nanometres, 2)));
        });
    }

    /// <summary>The chromaticity of this daylight: the CIE daylight locus.</summary>
    /// <exception cref="RefusalException">The temperature is not 4000 to 25 000 K.</exception>
    public static Chromaticity ChromaticityOf(ColourTemperature temperature)
    {
        var kelvin = Guard.Within(temperature.Kelvin, LowestKelvin, HighestKelvin, "the colour temperature of daylight", "K");
        var inverse = 1000 / kelvin;
        var x = kelvin <= 7000
            ? (((((-4.6070 * inverse) + 2.9678) * inverse) + 0.09911) * inverse) + 0.244063
            : (((((-2.0064 * inverse) + 1.9018) * inverse) + 0.24748) * inverse) + 0.237040;
        return new Chromaticity(x, (((-3.000 * x) + 2.870) * x) - 0.275);
    }
}
