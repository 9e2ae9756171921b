using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class SkyLightTests
{
    private static readonly Gen<SkyCover> GenCover = Gen.Select(Gen.Int[0, 2], Gen.Int[1, 16])
        .Select((cover, type) => Skies.Covers[cover].SpreadAs(CieGeneralSky.OfNumber(type)));

    private static readonly Gen<Facade> GenPlane = Gen.Select(Gen.Double[0, 360], Gen.Double[0, 180])
        .Select((bearing, tilt) => Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt)));

    [Fact]
    public void Level_ground_gets_what_is_said_to_fall_on_it() => Gen.Select(GenInstant, GenPlace, GenCover).Sample(
        (instant, place, cover) =>
        {
            var light = SkyLight.At(instant, place, cover);
            Assert.Equal(light.GlobalHorizontal.Lux, light.On(Facade.Level).Total.Lux, light.GlobalHorizontal.Lux * 1e-6);
            Assert.True(light.GlobalHorizontal.Lux > 1e-4);
        },
        iter: Samples.Of(200));

    // Another road to the same integral: a fine even grid of the whole dome, cells behind the plane left out.
    [Fact]
    public void The_dome_agrees_with_a_fine_grid() => Gen.Select(GenCover, GenPlane, Gen.Int[0, 400]).Sample(
        (cover, plane, day) =>
        {
            var light = SkyLight.At(new DateTimeOffset(2024, 3, 1, 10, 0, 0, TimeSpan.Zero).AddDays(day), Basin, cover);
            const int Rows = 60;
            const int Columns = 240;
            var sum = 0.0;
            for (var row = 0; row < Rows; row++)
            {
                var elevation = Angle.FromDegrees((row + 0.5) * 90 / Rows);
                for (var column = 0; column < Columns; column++)
                {
                    var azimuth = Angle.FromDegrees((column + 0.5) * 360 / Columns);
                    var cosine = plane.CosineTo(new SkyPosition(azimuth, elevation, elevation));
                    if (cosine > 0)
                    {
                        sum += light.LuminanceAt(azimuth, elevation).CandelasPerSquareMetre * cosine * Math.Cos(elevation.Radians);
                    }
                }
            }

            sum *= Math.PI / 2 / Rows * (2 * Math.PI / Columns);
            Assert.Equal(sum, light.On(plane).FromSky.Lux, (sum * 0.01) + (light.DiffuseHorizontal.Lux * 0.001));
        },
        iter: Samples.Of(12));

    [Fact]
    public void A_surface_is_as_bright_as_its_reflectance_says() => Gen.Select(GenInstant, GenCover, GenPlane, Gen.Double[0, 1]).Sample(
        (instant, cover, plane, reflectance) =>
        {
            var light = SkyLight.At(instant, Basin, cover).On(plane);
            var white = light.LuminanceOf(Reflectance.FromFraction(1)).CandelasPerSquareMetre;
            Assert.Equal(light.Total.Lux, Math.PI * white, 1e-9 * light.Total.Lux);
            Assert.Equal(reflectance * white, light.LuminanceOf(Reflectance.FromFraction(reflectance)).CandelasPerSquareMetre, 1e-9 * white);
        },
        iter: Samples.Of(100));

    [Fact]
    public void Brighter_ground_never_darkens_anything() => Gen.Select(GenInstant, GenCover, GenPlane).Sample(
        (instant, cover, plane) =>
        {
            double On(double ground) => SkyLight.At(instant, Basin, cover, Reflectance.FromFraction(ground)).On(plane).Total.Lux;
            Assert.True(On(0.8) >= On(0.2));
            Assert.True(On(0.2) >= On(0));
        },
        iter: Samples.Of(60));

    // Dusk goes on where day ends: light on level ground has no step at the horizon and falls all through twilight.
    [Theory]
    [InlineData("clear")]
    [InlineData("hazy")]
    [InlineData("overcast")]
    public void Light_fades_without_a_step(string sky)
    {
        var sunset = SkyDay.Of(new DateTimeOffset(2024, 9, 2, 0, 0, 0, TimeSpan.Zero), TimeSpan.FromDays(1), Basin).First(SkyEventKind.Sunset)!.Value;
        var levels = Enumerable.Range(-240, 1080).Select(step => SkyLight.At(sunset.AddSeconds(5 * step), Basin, SkyCover.Find(sky)).DiffuseHorizontal.Lux).ToList();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.InRange(pair.Second / pair.First, 0.98, 1.005));
        Assert.True(levels[^1] < levels[0] / 1000);
    }

    [Fact]
    public void Less_light_comes_through_more_cloud()
    {
        var noon = new DateTimeOffset(2024, 6, 20, 11, 40, 0, TimeSpan.Zero);
        var lights = Skies.Covers.Select(cover => SkyLight.At(noon, Basin, cover)).ToList();
        Assert.True(lights[0].DirectNormal > lights[1].DirectNormal && lights[1].DirectNormal > lights[2].DirectNormal);
        Assert.True(lights[0].GlobalHorizontal > lights[1].GlobalHorizontal && lights[1].GlobalHorizontal > lights[2].GlobalHorizontal);
        Assert.Equal(0, lights[2].DirectNormal.Lux);
    }

    [Fact]
    public void A_first_reading_is_the_less_certain_the_lower_the_sun()
    {
        SkyLight At(int hour) => SkyLight.At(new DateTimeOffset(2024, 6, 20, hour, 30, 0, TimeSpan.Zero), Basin, SkyCover.Clear);
        var spreads = new[] { 18, 17, 14 }.Select(hour => At(hour)).Select(light =>
            FirstReading.Of(light, Facade.Facing(light.SunPosition.Azimuth), Reflectance.FromFraction(0.4)).Spread.Value).ToList();
        Assert.True(spreads[0] > spreads[1] && spreads[1] > spreads[2]);
    }

    [Fact]
    public void Shade_sunset_and_cloud_have_their_colours()
    {
        var morning = SkyLight.At(new DateTimeOffset(2024, 6, 20, 4, 0, 0, TimeSpan.Zero), Basin, SkyCover.Clear);
        LightColour Of(SkyLight light, double bearing) => FirstReading.Of(light, Facade.Facing(Angle.FromDegrees(bearing)), Reflectance.FromFraction(0.4)).Colour;
        Assert.Equal(LightColour.LowSun, Of(morning, morning.SunPosition.Azimuth.Degrees));
        Assert.Equal(LightColour.OpenShade, Of(morning, 270));
        Assert.Equal(LightColour.Overcast, Of(SkyLight.At(morning.Instant, Basin, SkyCover.Overcast), 60));
        Assert.Equal(LightColour.BlueShade, Of(SkyLight.At(new DateTimeOffset(2024, 6, 20, 20, 30, 0, TimeSpan.Zero), Basin, SkyCover.Clear), 60));
    }

    [Theory]
    [InlineData(361, 90)]
    [InlineData(-1, 90)]
    [InlineData(double.NaN, 90)]
    [InlineData(90, 181)]
    public void Facades_that_face_nowhere_are_refused(double bearing, double tilt)
        => Assert.Throws<RefusalException>(() => Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt)));

    [Fact]
    public void An_unknown_sky_is_refused_with_the_known_ones()
        => Assert.Contains("hazy", Assert.Throws<RefusalException>(() => SkyCover.Find("purple")).Message, StringComparison.Ordinal);
}
