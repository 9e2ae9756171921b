using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>CIE 15:2004 / ISO 11664-2: illuminants A, D50, D55, D65, D75 (tables from memory). Tolerances: the digits printed.</summary>
[Source("cie-15", "tables", Basis.Memory)]
public class CieIlluminantTests
{
    // Chromaticities of the illuminants for the 1931 observer, four decimals printed. Tolerance 0.0002: CIE's own formula of the locus lies
    // 0.0001 above the chromaticities it prints, and so do spectra made from it.
    [Theory]
    [InlineData(5003, 0.3457, 0.3585)]
    [InlineData(5503, 0.3324, 0.3474)]
    [InlineData(6504, 0.3127, 0.3290)]
    [InlineData(7504, 0.2990, 0.3149)]
    public void Daylight_has_the_published_chromaticity(double kelvin, double x, double y)
    {
        var temperature = ColourTemperature.FromKelvin(kelvin);
        var bySpectrum = Cie1931Observer.ChromaticityOf(Daylight.OfTemperature(temperature));
        Assert.Equal(x, bySpectrum.X, 0.0002);
        Assert.Equal(y, bySpectrum.Y, 0.0002);

        var byFormula = Daylight.ChromaticityOf(temperature);
        Assert.Equal(x, byFormula.X, 0.0002);
        Assert.Equal(y, byFormula.Y, 0.0002);
    }

    // The locus at the ends of its formulas and beyond their knee at 7000 K, as tables print it.
    [Theory]
    [InlineData(4000, 0.3823, 0.3838)]
    [InlineData(10000, 0.2788, 0.2920)]
    [InlineData(25000, 0.2499, 0.2548)]
    public void The_locus_has_the_published_ends(double kelvin, double x, double y)
    {
        var found = Daylight.ChromaticityOf(ColourTemperature.FromKelvin(kelvin));
        Assert.Equal(x, found.X, 0.0001);
        Assert.Equal(y, found.Y, 0.0001);
    }

    // Two formulas of one line: at the knee they are taken to meet within the digits they print.
    [Fact]
    public void The_locus_has_no_step_at_its_knee()
    {
        var (below, above) = (Daylight.ChromaticityOf(ColourTemperature.FromKelvin(7000)), Daylight.ChromaticityOf(ColourTemperature.FromKelvin(7000.001)));
        Assert.Equal(below.X, above.X, 0.0001);

        // 0.244063 + 0.09911/7 + 2.9678/49 − 4.6070/343, by hand.
        Assert.Equal(0.305357, below.X, 2e-6);
    }

    // The same spectra judged by McCamy's formula, which knows nothing of the daylight locus.
    [Theory]
    [InlineData(5003)]
    [InlineData(5503)]
    [InlineData(6504)]
    [InlineData(7504)]
    [Source("mccamy-1992")]
    public void Daylight_has_the_temperature_it_was_asked_for(double kelvin)
    {
        var spectrum = Daylight.OfTemperature(ColourTemperature.FromKelvin(kelvin));
        Assert.Equal(kelvin, Cie1931Observer.McCamyKelvin(Cie1931Observer.ChromaticityOf(spectrum)), kelvin * 0.002);
    }

    // Relative spectral power of D65.
    [Theory]
    [InlineData(300, 0.0341)]
    [InlineData(320, 20.236)]
    [InlineData(350, 44.9117)]
    [InlineData(380, 49.9755)]
    [InlineData(400, 82.7549)]
    [InlineData(430, 86.6823)]
    [InlineData(460, 117.812)]
    [InlineData(500, 109.354)]
    [InlineData(560, 100)]
    [InlineData(600, 90.0062)]
    [InlineData(650, 80.0268)]
    [InlineData(700, 71.6091)]
    [InlineData(780, 63.3828)]
    public void D65_has_the_published_spectrum(int nanometres, double power)
        => Assert.Equal(power, At(Daylight.OfTemperature(Daylight.D65), nanometres), 0.01);

    // Relative spectral power of illuminant A: a full radiator of 2848 K on the scale of c2 = 0.01435, so 2848·0.014388/0.01435 K on today's.
    [Theory]
    [InlineData(300, 0.930483)]
    [InlineData(400, 14.7080)]
    [InlineData(500, 59.8611)]
    [InlineData(560, 100)]
    [InlineData(600, 129.043)]
    [InlineData(700, 198.261)]
    [InlineData(780, 241.675)]
    public void A_full_radiator_has_the_spectrum_of_illuminant_A(int nanometres, double power)
    {
        var lamp = Planckian.OfTemperature(ColourTemperature.FromKelvin(2848 * 0.014388 / 0.01435));
        Assert.Equal(power, At(lamp, nanometres), power * 1e-5);
    }

    [Fact]
    public void Illuminant_A_has_the_published_chromaticity()
    {
        var found = Cie1931Observer.ChromaticityOf(Planckian.OfTemperature(ColourTemperature.FromKelvin(2855.5)));
        Assert.Equal(0.4476, found.X, 0.00015);
        Assert.Equal(0.4074, found.Y, 0.00015);
    }

    // V(λ), CIE 1924.
    [Theory]
    [InlineData(350, 0)]
    [InlineData(400, 0.000396)]
    [InlineData(450, 0.038)]
    [InlineData(510, 0.503)]
    [InlineData(550, 0.99495)]
    [InlineData(560, 0.995)]
    [InlineData(600, 0.631)]
    [InlineData(700, 0.004102)]
    public void The_eye_has_the_published_efficiency(int nanometres, double efficiency)
        => Assert.Equal(efficiency, At(Photopic.Efficiency, nanometres), 5e-6);

    private static double At(Spectrum spectrum, int nanometres)
        => spectrum.Values[(nanometres - Spectrum.FirstNanometres) / Spectrum.StepNanometres];
}
