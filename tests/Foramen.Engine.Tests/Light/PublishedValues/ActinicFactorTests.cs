using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// Actinic factors worked out apart from this code, from the CIE daylight series, Planck's law and box sensitivities at 10 nm, printed to two
/// decimals (stops likewise). Tolerance: one in the last digit printed.
/// </summary>
[Source("cie-15", "daylight series", Basis.Worked)]
public class ActinicFactorTests
{
    [Theory]
    [InlineData(3000, false, 1.00, -1.26, 1.00, -0.83)]
    [InlineData(3200, false, 1.14, -1.07, 1.09, -0.71)]
    [InlineData(5003, true, 2.11, -0.18, 1.64, -0.12)]
    [InlineData(5503, true, 2.39, 0, 1.78, 0)]
    [InlineData(6504, true, 2.90, 0.28, 2.04, 0.20)]
    [InlineData(7504, true, 3.32, 0.47, 2.25, 0.34)]
    [InlineData(10000, true, 4.10, 0.78, 2.63, 0.56)]
    [InlineData(12000, true, 4.52, 0.92, 2.83, 0.67)]
    public void Factors_and_stops(double kelvin, bool daylight, double blue, double blueStops, double variable, double variableStops)
    {
        var temperature = ColourTemperature.FromKelvin(kelvin);
        var light = daylight ? Daylight.OfTemperature(temperature) : Planckian.OfTemperature(temperature);
        Assert.Equal(blue, Actinic.Factor(light, PaperSensitivity.BlueSensitive), 0.0101);
        Assert.Equal(variable, Actinic.Factor(light, PaperSensitivity.VariableContrast), 0.0101);
        Assert.Equal(blueStops, Actinic.StopsFromDaylight(light, PaperSensitivity.BlueSensitive).Value, 0.0101);
        Assert.Equal(variableStops, Actinic.StopsFromDaylight(light, PaperSensitivity.VariableContrast).Value, 0.0101);
    }

    // Without glass in the way ultraviolet reaches the paper; the same source, band extended to 350 nm.
    [Fact]
    public void Ultraviolet_widens_the_spread()
    {
        var paper = PaperSensitivity.FromBox("ultraviolet too", 350, 500);
        Assert.Equal(5.08, Actinic.Factor(Daylight.OfTemperature(ColourTemperature.FromKelvin(12000)), paper), 0.0101);
        Assert.Equal(2.47, Actinic.Factor(Daylight.OfTemperature(Daylight.D55), paper), 0.0101);
    }
}
