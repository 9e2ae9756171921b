using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class LightMeterTests
{
    private static readonly Gen<LightMeter> GenMeter = Gen.Select(Gen.Double[10.6, 14.5], Gen.Double[240, 400], Gen.Double[320, 540])
        .Select((k, flat, dome) => new LightMeter(new MeterConstants { Reflected = k, IncidentFlat = flat, IncidentDome = dome }));

    private static readonly Gen<double> GenValue = Gen.Double[-10, 20];

    [Fact]
    public void One_more_exposure_value_is_twice_the_luminance() => Gen.Select(GenMeter, GenValue).Sample((meter, value) =>
        Assert.Equal(2, Of(meter, value + 1) / Of(meter, value), 1e-9));

    [Fact]
    public void Exposure_value_and_luminance_are_each_others_inverse() => Gen.Select(GenMeter, GenValue).Sample((meter, value) =>
        Assert.Equal(value, meter.ExposureValueOf(meter.LuminanceFrom(ExposureValue.FromAtIso100(value))).AtIso100, 1e-9));

    [Fact]
    public void Metered_time_is_the_inverse_of_the_reading() => Gen.Select(GenMeter, Gen.Double[1, 300], Gen.Double[0.001, 100], Gen.Double[1, 6400])
        .Sample((meter, aperture, seconds, iso) =>
        {
            var (hole, speed) = (FNumber.FromValue(aperture), CameraSpeed.FromIso(iso));
            var luminance = meter.LuminanceFrom(hole, Duration.FromSeconds(seconds), speed);
            Assert.Equal(seconds, meter.MeteredTime(luminance, hole, speed).Seconds, seconds * 1e-9);
        });

    [Fact]
    public void Settings_that_give_an_exposure_value_agree_with_it() => Gen.Select(GenMeter, Gen.Double[1, 64], Gen.Double[0.001, 10]).Sample((meter, aperture, seconds) =>
    {
        var (hole, time, speed) = (FNumber.FromValue(aperture), Duration.FromSeconds(seconds), CameraSpeed.FromIso(100));
        var value = (2 * Math.Log2(hole.Value)) - Math.Log2(time.Seconds);
        Assert.Equal(Of(meter, value), meter.LuminanceFrom(hole, time, speed).CandelasPerSquareMetre, Of(meter, value) * 1e-9);
    });

    [Fact]
    public void A_card_of_the_meters_mid_tone_reads_as_incident_light_does() => Gen.Select(GenMeter, Gen.Double[0, 1e5], Gen.Enum<IncidentReceptor>())
        .Sample((meter, lux, receptor) =>
        {
            var light = Illuminance.FromLux(lux);
            Assert.Equal(
                meter.LuminanceFrom(light, receptor).CandelasPerSquareMetre,
                LightMeter.LuminanceOfCard(light, meter.MidTone(receptor)).CandelasPerSquareMetre,
                (lux * 1e-9) + 1e-12);
        });

    [Fact]
    public void Darkness_and_no_time_at_all_are_refused_in_a_sentence()
    {
        var (hole, speed) = (FNumber.FromValue(180), CameraSpeed.FromIso(3));
        Assert.Contains("time is zero", Assert.Throws<RefusalException>(() => LightMeter.Usual.LuminanceFrom(hole, default, speed)).Message, StringComparison.Ordinal);
        Assert.Contains("luminance is zero", Assert.Throws<RefusalException>(() => LightMeter.Usual.MeteredTime(default, hole, speed)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => LightMeter.Usual.ExposureValueOf(default));
        Assert.Throws<RefusalException>(() => LightMeter.Usual.LuminanceFrom(ExposureValue.FromAtIso100(40)));
    }

    private static double Of(LightMeter meter, double value) => meter.LuminanceFrom(ExposureValue.FromAtIso100(value)).CandelasPerSquareMetre;
}
