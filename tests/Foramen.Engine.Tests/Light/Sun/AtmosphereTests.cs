using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class AtmosphereTests
{
    // The standard atmosphere of ICAO (from memory): 898.76, 540.20 and 1074.78 of 1013.25 hPa.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1000, 898.76 / 1013.25)]
    [InlineData(5000, 540.20 / 1013.25)]
    [InlineData(-500, 1074.78 / 1013.25)]
    [InlineData(9000, 307.42 / 1013.25)]
    public void Air_thins_with_height(double metres, double share)
    {
        var air = Atmosphere.At(GeographicPosition.FromDegrees(10, 10, metres));
        Assert.Equal(1010 * share, air.PressureHectopascals, 0.5);
        Assert.Equal(10, air.TemperatureCelsius);
    }

    [Fact]
    public void Below_the_horizon_refraction_fades_out_to_the_nadir()
    {
        var air = new Atmosphere();
        Assert.Equal(air.RefractionDegrees(-1), air.RefractionDegrees(-1.000001), 1e-6);
        Assert.Equal(air.RefractionDegrees(-1) / 2, air.RefractionDegrees(-45.5), 1e-12);
        Assert.Equal(0, air.RefractionDegrees(-90), 1e-12);
    }

    [Fact]
    public void Air_at_the_edges_is_air_and_beyond_is_refused()
    {
        Assert.Equal(300, new Atmosphere { PressureHectopascals = 300 }.PressureHectopascals);
        Assert.Equal(1100, new Atmosphere { PressureHectopascals = 1100 }.PressureHectopascals);
        Assert.Equal(-60, new Atmosphere { TemperatureCelsius = -60 }.TemperatureCelsius);
        Assert.Equal(60, new Atmosphere { TemperatureCelsius = 60 }.TemperatureCelsius);
        Assert.Throws<RefusalException>(() => new Atmosphere { PressureHectopascals = 299 });
        Assert.Throws<RefusalException>(() => new Atmosphere { PressureHectopascals = 1101 });
        Assert.Throws<RefusalException>(() => new Atmosphere { TemperatureCelsius = -61 });
        Assert.Throws<RefusalException>(() => new Atmosphere { TemperatureCelsius = 61 });
    }
}
