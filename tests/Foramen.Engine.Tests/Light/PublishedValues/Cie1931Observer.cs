using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// CIE 1931 colour-matching functions x̄ and z̄ at 10 nm, 380–780 nm (CIE 15, ISO/CIE 11664-1, from memory), so that chromaticities can be
/// found by a road that the code under test does not use. ȳ is V(λ), which the engine embeds.
/// </summary>
internal static class Cie1931Observer
{
    private static readonly double[] XBar =
    [
        0.001368, 0.004243, 0.01431, 0.04351, 0.13438, 0.2839, 0.34828, 0.3362, 0.2908, 0.19536,
        0.09564, 0.03201, 0.0049, 0.0093, 0.06327, 0.1655, 0.2904, 0.43345, 0.5945, 0.7621,
        0.9163, 1.0263, 1.0622, 1.0026, 0.85445, 0.6424, 0.4479, 0.2835, 0.1649, 0.0874,
        0.04677, 0.0227, 0.011359, 0.00579, 0.002899, 0.00144, 0.00069, 0.000332, 0.000166, 0.000083, 0.000042,
    ];

    private static readonly double[] ZBar =
    [
        0.00645, 0.02005, 0.06785, 0.2074, 0.6456, 1.3856, 1.74706, 1.77211, 1.6692, 1.28764,
        0.81295, 0.46518, 0.272, 0.1582, 0.07825, 0.04216, 0.0203, 0.00875, 0.0039, 0.0021,
        0.00165, 0.0011, 0.0008, 0.00034, 0.00019, 0.00005, 0.00002, 0, 0, 0,
        0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0,
    ];

    public static Chromaticity ChromaticityOf(Spectrum light)
    {
        double x = 0, z = 0;
        for (var i = 0; i < XBar.Length; i++)
        {
            var power = light.Values[(380 + (10 * i) - Spectrum.FirstNanometres) / Spectrum.StepNanometres];
            x += power * XBar[i];
            z += power * ZBar[i];
        }

        var y = Spectrum.Multiply(light, Photopic.Efficiency).Integral() / Spectrum.StepNanometres;
        return new Chromaticity(x / (x + y + z), y / (x + y + z));
    }

    /// <summary>C. S. McCamy, Color Research and Application 17, 142 (1992); good to some 2 K between D50 and D75.</summary>
    public static double McCamyKelvin(Chromaticity chromaticity)
    {
        var n = (chromaticity.X - 0.3320) / (0.1858 - chromaticity.Y);
        return (449 * n * n * n) + (3525 * n * n) + (6823.3 * n) + 5520.33;
    }
}
