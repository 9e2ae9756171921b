using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// ISO 2720:1974, t/N² = K/(L·S) and t/N² = C/(E·S); values that manufacturers of meters print in their tables (from memory).
/// </summary>
public class Iso2720Tests
{
    // Luminance for EV at ISO 100 with K 12.5, as printed beside meters' scales.
    [Theory]
    [InlineData(0, 0.125)]
    [InlineData(3, 1)]
    [InlineData(5, 4)]
    [InlineData(10, 128)]
    [InlineData(12, 512)]
    [InlineData(15, 4096)]
    [Source("iso-2720", "K 12.5, as printed beside scales of meters", Basis.Memory)]
    public void Luminance_of_an_exposure_value(double value, double candelas)
        => Assert.Equal(candelas, LightMeter.Usual.LuminanceFrom(ExposureValue.FromAtIso100(value)).CandelasPerSquareMetre, candelas * 1e-9);

    // Illuminance for EV at ISO 100 with C 250 is 2.5·2^EV; the mid-tone of that light has the luminance of the same EV.
    [Theory]
    [InlineData(0, 2.5)]
    [InlineData(10, 2560)]
    [InlineData(15, 81920)]
    [Source("iso-2720", "C 250", Basis.Worked)]
    public void Incident_light_of_an_exposure_value(double value, double lux)
        => Assert.Equal(
            LightMeter.Usual.LuminanceFrom(ExposureValue.FromAtIso100(value)).CandelasPerSquareMetre,
            LightMeter.Usual.LuminanceFrom(Illuminance.FromLux(lux), IncidentReceptor.Flat).CandelasPerSquareMetre,
            lux * 1e-9);

    // The mid-tone reflectances these constants imply, as photographic texts quote them: 12.5/250 gives 15.7 %, 12.5/330 gives 11.9 %.
    [Theory]
    [InlineData(IncidentReceptor.Flat, 0.157)]
    [InlineData(IncidentReceptor.Dome, 0.119)]
    [Source("iso-2720", "K and C", Basis.Worked)]
    public void Mid_tone_in_the_meters_mind(IncidentReceptor receptor, double reflectance)
        => Assert.Equal(reflectance, LightMeter.Usual.MidTone(receptor).Fraction, 0.0005);

    // Full sun, one over the speed at f/16: the rule of thumb stands for 256·K = 3200 cd/m².
    [Theory]
    [InlineData(16, 0.01, 100, 3200)]
    [InlineData(16, 0.005, 200, 3200)]
    [InlineData(8, 0.0025, 100, 3200)]
    [Source("common-practice")]
    [Source("iso-2720", Basis.Worked)]
    public void Luminance_of_a_sunny_scene(double aperture, double seconds, double iso, double candelas)
        => Assert.Equal(
            candelas,
            LightMeter.Usual.LuminanceFrom(FNumber.FromValue(aperture), Duration.FromSeconds(seconds), CameraSpeed.FromIso(iso)).CandelasPerSquareMetre,
            candelas * 1e-9);

    // Metered seconds at pinhole f-numbers in that sun, (N/16)²/S.
    [Theory]
    [InlineData(150, 1, 87.9)]
    [InlineData(200, 2, 78.1)]
    [InlineData(200, 3, 52.1)]
    [InlineData(250, 6, 40.7)]
    [Source("iso-2720", Basis.Worked)]
    public void Metered_time_behind_a_hole(double aperture, double index, double seconds)
        => Assert.Equal(
            seconds,
            LightMeter.Usual.MeteredTime(Luminance.FromCandelasPerSquareMetre(3200), FNumber.FromValue(aperture), CameraSpeed.FromIso(index)).Seconds,
            0.051);

    // Lambert: a perfect diffuser under π lux has 1 cd/m²; 18 % under 10 000 lx has 573 cd/m².
    [Theory]
    [InlineData(Math.PI, 1, 1)]
    [InlineData(10000, 0.18, 572.96)]
    [Source("lighting-textbook", "Lambert", Basis.Worked)]
    public void Luminance_of_a_card(double lux, double reflectance, double candelas)
        => Assert.Equal(candelas, LightMeter.LuminanceOfCard(Illuminance.FromLux(lux), Reflectance.FromFraction(reflectance)).CandelasPerSquareMetre, 0.005);

    // The standard's ranges, from memory, all taken; 14 is in common use; beyond is a slip of the finger.
    [Fact]
    [Source("iso-2720", "ranges of K and C", Basis.Memory)]
    public void Constants_keep_to_their_ranges()
    {
        Assert.Equal(10.6, new MeterConstants { Reflected = 10.6 }.Reflected);
        Assert.Equal(13.4, new MeterConstants { Reflected = 13.4 }.Reflected);
        Assert.Equal(14, MeterConstants.WithFourteen.Reflected);
        Assert.Equal(400, new MeterConstants { IncidentFlat = 400 }.Incident(IncidentReceptor.Flat));
        Assert.Equal(540, new MeterConstants { IncidentDome = 540 }.Incident(IncidentReceptor.Dome));
        Assert.Throws<RefusalException>(() => new MeterConstants { Reflected = 125 });
        Assert.Throws<RefusalException>(() => new MeterConstants { IncidentFlat = 25 });
        Assert.Throws<RefusalException>(() => new MeterConstants { IncidentDome = double.NaN });
    }
}
