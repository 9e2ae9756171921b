using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// The APEX tables of Exif 2.3 (CIPA DC-008), annex C (from memory). f-numbers and times there are the engraved, rounded ones, so each may be
/// off its exact value by what the engraving rounds: up to a tenth of a unit.
/// </summary>
[Source("exif-2.3", "annex C", Basis.Memory)]
public class ExifApexTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(1.4, 1)]
    [InlineData(2, 2)]
    [InlineData(2.8, 3)]
    [InlineData(4, 4)]
    [InlineData(5.6, 5)]
    [InlineData(8, 6)]
    [InlineData(11, 7)]
    [InlineData(16, 8)]
    [InlineData(22, 9)]
    [InlineData(32, 10)]
    public void Aperture_values(double aperture, double apertureValue)
    {
        Assert.Equal(apertureValue, Apex.ApertureValue(FNumber.FromValue(aperture)), 0.1);
        Assert.Equal(aperture, Apex.Aperture(apertureValue).Value, aperture * 0.035);
    }

    [Theory]
    [InlineData(30, -5)]
    [InlineData(15, -4)]
    [InlineData(8, -3)]
    [InlineData(1, 0)]
    [InlineData(1 / 4.0, 2)]
    [InlineData(1 / 15.0, 4)]
    [InlineData(1 / 60.0, 6)]
    [InlineData(1 / 125.0, 7)]
    [InlineData(1 / 500.0, 9)]
    [InlineData(1 / 2000.0, 11)]
    public void Time_values(double seconds, double timeValue)
    {
        Assert.Equal(timeValue, Apex.TimeValue(Duration.FromSeconds(seconds)), 0.1);
        Assert.Equal(seconds, Apex.Time(timeValue).Seconds, seconds * 0.07);
    }

    [Theory]
    [InlineData(3.125, 0)]
    [InlineData(6.25, 1)]
    [InlineData(25, 3)]
    [InlineData(100, 5)]
    [InlineData(200, 6)]
    [InlineData(400, 7)]
    public void Speed_values(double iso, double speedValue)
    {
        Assert.Equal(speedValue, Apex.SpeedValue(CameraSpeed.FromIso(iso)), 1e-12);
        Assert.Equal(iso, Apex.Speed(speedValue).Iso, 1e-9);
    }

    // The table is in footlamberts; one is 3.426 cd/m².
    [Theory]
    [InlineData(0.25, -2)]
    [InlineData(0.5, -1)]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(8, 3)]
    [InlineData(30, 5)]
    public void Brightness_values(double footlamberts, double brightnessValue)
    {
        Assert.Equal(brightnessValue, Apex.BrightnessValue(Luminance.FromCandelasPerSquareMetre(footlamberts * 3.426)), 0.1);
        Assert.Equal(footlamberts * 3.426, Apex.Brightness(brightnessValue).CandelasPerSquareMetre, footlamberts * 3.426 * 0.07);
    }

    // Av + Tv = Bv + Sv: f/8, 1/125 s, ISO 100 balances at Bv 8, that is 256 footlamberts.
    [Fact]
    public void The_equation_balances()
    {
        var brightness = Apex.ApertureValue(FNumber.FromValue(8)) + Apex.TimeValue(Duration.FromSeconds(1 / 128.0)) - Apex.SpeedValue(CameraSpeed.FromIso(100));
        Assert.Equal(8, brightness, 1e-9);
        Assert.Equal(256 * 3.426, Apex.Brightness(brightness).CandelasPerSquareMetre, 0.1);
    }

    [Fact]
    [OwnRule]
    public void Zero_time_and_darkness_are_refused()
    {
        Assert.Throws<RefusalException>(() => Apex.TimeValue(default));
        Assert.Throws<RefusalException>(() => Apex.BrightnessValue(default));
        Assert.Throws<RefusalException>(() => Apex.Time(double.NaN));
        Assert.Throws<RefusalException>(() => Apex.Aperture(-40));
    }
}
