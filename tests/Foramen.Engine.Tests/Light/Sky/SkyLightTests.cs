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

    [Fact]
    public void The_ground_throws_back_what_its_reflectance_says()
    {
        var noon = new DateTimeOffset(2024, 6, 20, 11, 40, 0, TimeSpan.Zero);
        double FromGround(double ground) => SkyLight.At(noon, Basin, SkyCover.Clear, Reflectance.FromFraction(ground)).On(Facade.Facing(Angle.Zero)).FromGround.Lux;
        Assert.Equal(0, FromGround(0));
        Assert.Equal(4, FromGround(0.8) / FromGround(0.2), 1e-9);
        Assert.Equal(0, SkyCover.Clear.DirectNormalLux(0, 127_500));
    }

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

    // A night of the full moon high over the south: it gives the direct light, as weak as it is, and casts it where it stands.
    [Fact]
    public void Moonlight_is_weak_sunlight()
    {
        var light = SkyLight.At(new DateTimeOffset(2024, 1, 25, 23, 30, 0, TimeSpan.Zero), Basin, SkyCover.Clear);
        var moon = light.MoonPosition!.Value;
        var direct = SkyCover.Clear.DirectNormalLux(moon.Elevation.Degrees, Moon.AboveAirLux(light.Instant));
        Assert.Equal(direct, light.DirectNormal.Lux, direct * 1e-9);
        var sun = SkyCover.Clear.DiffuseHorizontalLux(light.SunPosition.TrueElevation.Degrees, SkyLight.SolarConstantLux / Math.Pow(Sun.DistanceAstronomicalUnits(light.Instant), 2));
        var sky = sun + SkyCover.Clear.DiffuseHorizontalLux(moon.TrueElevation.Degrees, Moon.AboveAirLux(light.Instant));
        Assert.Equal(sky, light.DiffuseHorizontal.Lux, sky * 1e-9);
        Assert.Equal(sky + (direct * Math.Sin(moon.Elevation.Radians)), light.GlobalHorizontal.Lux, sky * 1e-9);
        var wall = light.On(Facade.Facing(moon.Azimuth));
        Assert.Equal(direct * Math.Cos(moon.Elevation.Radians), wall.Direct.Lux, direct * 1e-9);
        Assert.Equal(0.2 * light.GlobalHorizontal.Lux / 2, wall.FromGround.Lux, direct * 1e-9);
        Assert.Equal(LightColour.Noon, FirstReading.Of(light, Facade.Facing(moon.Azimuth), Reflectance.FromFraction(0.4)).Colour);
    }

    // Twelve degrees down and more the sky of no moon is even: as bright overhead as on any side.
    [Fact]
    public void A_night_without_moon_is_even()
    {
        var light = SkyLight.At(new DateTimeOffset(2024, 1, 11, 22, 0, 0, TimeSpan.Zero), Basin, SkyCover.Clear);
        Assert.Null(light.MoonPosition);
        Assert.Equal(light.DiffuseHorizontal.Lux / Math.PI, light.ZenithLuminance.CandelasPerSquareMetre, 1e-12);
        Assert.Equal(light.DiffuseHorizontal.Lux / Math.PI, light.LuminanceAt(light.SunPosition.Azimuth, Angle.FromDegrees(5)).CandelasPerSquareMetre, 1e-12);
        Assert.Equal(light.DiffuseHorizontal.Lux / 2, light.On(Facade.Facing(Angle.FromDegrees(40))).FromSky.Lux, 1e-9);
    }

    // Half faded six degrees down: half of the sky as the sun shapes it, half even.
    [Fact]
    public void At_the_end_of_civil_dusk_half_of_the_suns_side_is_left()
    {
        var dusk = SkyDay.Of(new DateTimeOffset(2024, 1, 11, 12, 0, 0, TimeSpan.Zero), TimeSpan.FromDays(1), Basin).First(SkyEventKind.CivilDusk)!.Value;
        var light = SkyLight.At(dusk, Basin, SkyCover.Clear);
        Assert.Null(light.MoonPosition);
        var (azimuth, elevation) = (Angle.FromDegrees(light.SunPosition.Azimuth.Degrees + 30), Angle.FromDegrees(20));
        var shaped = SkyCover.Clear.Sky.RelativeLuminance(elevation, Angle.FromDegrees(30), Angle.Zero) / SkyDome.Horizontal(SkyCover.Clear.Sky, 0);
        var expected = light.DiffuseHorizontal.Lux * (shaped + (1 / Math.PI)) / 2;
        Assert.Equal(expected, light.LuminanceAt(azimuth, elevation).CandelasPerSquareMetre, expected * 1e-5);
        Assert.Throws<RefusalException>(() => light.LuminanceAt(azimuth, Angle.FromDegrees(-1)));
        Assert.Throws<RefusalException>(() => light.LuminanceAt(azimuth, Angle.FromDegrees(91)));
    }

    // A wall that the sun rakes along has no direct light from it.
    [Fact]
    public void The_sun_does_not_reach_round_the_corner()
    {
        var light = SkyLight.At(new DateTimeOffset(2024, 6, 20, 11, 40, 0, TimeSpan.Zero), Basin, SkyCover.Clear);
        Assert.Equal(0, light.On(Facade.Facing(Angle.FromDegrees(0))).Direct.Lux);
        Assert.Equal(light.DirectNormal.Lux, light.On(Facade.Leaning(light.SunPosition.Azimuth, light.SunPosition.Zenith)).Direct.Lux, 1e-6 * light.DirectNormal.Lux);
        Assert.Equal(0, light.On(Facade.Level).FromGround.Lux);
        var ceiling = light.On(Facade.Leaning(Angle.Zero, Angle.FromDegrees(180)));
        Assert.Equal(0, ceiling.FromSky.Lux, 1e-9);
        Assert.Equal(0.2 * light.GlobalHorizontal.Lux, ceiling.FromGround.Lux, 1e-9 * light.GlobalHorizontal.Lux);
    }

    [Theory]
    [InlineData(361, 90)]
    [InlineData(-1, 90)]
    [InlineData(double.NaN, 90)]
    [InlineData(90, 181)]
    public void Facades_that_face_nowhere_are_refused(double bearing, double tilt)
        => Assert.Throws<RefusalException>(() => Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt)));

    [Fact]
    public void Skies_are_found_by_their_names()
    {
        Assert.All(Skies.Covers, cover => Assert.Same(cover, SkyCover.Find($" {cover.Name.ToUpperInvariant()} ")));
        Assert.Same(SkyCover.Hazy, SkyCover.Find("Partly cloudy"));
        Assert.Throws<RefusalException>(() => SkyCover.Find(null!));
        Assert.Equal(5, SkyCover.Clear.SpreadAs(CieGeneralSky.OfNumber(5)).Sky.Number);
    }

    [Fact]
    public void An_unknown_sky_is_refused_with_the_known_ones()
        => Assert.Contains("hazy", Assert.Throws<RefusalException>(() => SkyCover.Find("purple")).Message, StringComparison.Ordinal);
}
