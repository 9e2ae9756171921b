using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

/// <summary>How certain a first reading is, put together by hand from what is said to be uncertain: root of the sum of squares, in stops.</summary>
public class FirstReadingTests
{
    private static readonly DateTimeOffset Noon = new(2024, 6, 20, 11, 40, 0, TimeSpan.Zero);

    private static readonly DateTimeOffset MoonlessMidnight = new(2024, 1, 11, 23, 0, 0, TimeSpan.Zero);

    // In the shade, the sky's own spread, 0.4 and 0.6 and 0.8, with 0.3 of the reflectance.
    [Theory]
    [InlineData("clear", 0.5)]
    [InlineData("hazy", 0.670820)]
    [InlineData("overcast", 0.854400)]
    public void In_the_shade_sky_and_surface_are_uncertain(string cover, double spread)
        => Assert.Equal(spread, Of(SkyLight.At(Noon, Basin, SkyCover.Find(cover), Black), 0).Spread.Value, 1e-6);

    // Deep in the night a whole stop more: √(0.4² + 1 + 0.3²).
    [Fact]
    public void At_night_a_stop_more() => Assert.Equal(1.118034, Of(SkyLight.At(MoonlessMidnight, Basin, SkyCover.Clear, Black), 0).Spread.Value, 1e-6);

    // At the end of civil dusk that stop is whole, at half of it half: √(0.4² + 0.5² + 0.3²).
    [Fact]
    public void At_dusk_it_grows_with_the_suns_depth()
    {
        var instant = new DateTimeOffset(2024, 1, 11, 15, 0, 0, TimeSpan.Zero);
        while (Sun.At(instant, Basin).TrueElevation.Degrees > -3)
        {
            instant = instant.AddSeconds(1);
        }

        Assert.Equal(0.707107, Of(SkyLight.At(instant, Basin, SkyCover.Clear, Black), 0).Spread.Value, 1e-3);
    }

    // Direct light: 0.2 of the source and 0.4 of the extinction, 0.21 for each air mass, in stops; it and the sky weigh by their parts.
    [Fact]
    public void In_the_sun_the_air_is_uncertain()
    {
        var sky = SkyLight.At(Noon, Basin, SkyCover.Clear, Black);
        var reading = Of(sky, 180);
        var part = reading.Light.Direct.Lux / reading.Light.Total.Lux;
        var air = 0.4 * 0.21 * AirMass.At(sky.SunPosition.Elevation) / 0.693147;
        var direct = part * Math.Sqrt(0.04 + (air * air));
        Assert.InRange(part, 0.5, 1);
        Assert.Equal(Math.Sqrt((direct * direct) + Math.Pow((1 - part) * 0.4, 2) + 0.09), reading.Spread.Value, 1e-5);
    }

    // By the moon it is the moon's air, and the night's stop on the sky.
    [Fact]
    public void In_moonlight_the_moons_air_is_uncertain()
    {
        var sky = SkyLight.At(new DateTimeOffset(2024, 1, 25, 23, 30, 0, TimeSpan.Zero), Basin, SkyCover.Clear, Black);
        var reading = Of(sky, 180);
        var part = reading.Light.Direct.Lux / reading.Light.Total.Lux;
        var air = 0.4 * 0.21 * AirMass.At(sky.MoonPosition!.Value.Elevation) / 0.693147;
        var (direct, rest) = (part * Math.Sqrt(0.04 + (air * air)), (1 - part) * Math.Sqrt(0.16 + 1));
        Assert.InRange(part, 0.4, 1);
        Assert.Equal(Math.Sqrt((direct * direct) + (rest * rest) + 0.09), reading.Spread.Value, 1e-5);
    }

    // Under a ceiling over black ground nothing is to be seen, and that is said in numbers.
    [Fact]
    public void Where_no_light_falls_the_reading_is_nought()
    {
        var reading = FirstReading.Of(SkyLight.At(Noon, Basin, SkyCover.Clear, Black), Facade.Leaning(Angle.Zero, Angle.FromDegrees(180)), Reflectance.FromFraction(0.4));
        Assert.Equal(0, reading.Luminance.CandelasPerSquareMetre, 1e-9);
        Assert.Equal(0.5, reading.Spread.Value, 1e-6);
    }

    [Fact]
    public void An_overcast_night_has_the_colour_of_overcast()
        => Assert.Equal(LightColour.Overcast, Of(SkyLight.At(MoonlessMidnight, Basin, SkyCover.Overcast), 0).Colour);

    [Fact]
    public void A_surface_that_is_known_makes_it_more_certain()
        => Assert.Equal(0.4, FirstReading.Of(SkyLight.At(Noon, Basin, SkyCover.Clear, Black), North, Reflectance.FromFraction(0.4), Stops.Zero).Spread.Value, 1e-9);

    [Fact]
    public void It_is_the_luminance_of_the_surface_in_that_light()
    {
        var reading = Of(SkyLight.At(Noon, Basin, SkyCover.Hazy), 180);
        Assert.Equal(0.4 * reading.Light.Total.Lux / Math.PI, reading.Luminance.CandelasPerSquareMetre, 1e-6);
        Assert.Equal(LightColour.Overcast, Of(SkyLight.At(Noon, Basin, SkyCover.Hazy), 0).Colour);
        Assert.Equal(LightColour.Noon, Of(SkyLight.At(Noon, Basin, SkyCover.Clear), 180).Colour);
        Assert.Equal(LightColour.OpenShade, Of(SkyLight.At(Noon, Basin, SkyCover.Clear), 0).Colour);
        Assert.Equal(LightColour.BlueShade, Of(SkyLight.At(MoonlessMidnight, Basin, SkyCover.Clear), 0).Colour);
    }

    private static readonly Reflectance Black = Reflectance.FromFraction(0);

    private static Facade North => Facade.Facing(Angle.Zero);

    // In the shadow of a mill the wall has the light of sky and ground alone, as it had it before, and the colour of shade.
    [Fact]
    public void What_hides_the_sun_takes_its_light_and_no_other()
    {
        var sky = SkyLight.At(Noon, Basin, SkyCover.Clear);
        var sun = sky.SunPosition.Azimuth.Degrees;
        var facade = Facade.Facing(sky.SunPosition.Azimuth);
        Obstacle Mill(double bearing, double top) => Obstacle.Between("mill", Angle.FromDegrees(bearing - 5), Angle.FromDegrees(bearing + 5), Angle.FromDegrees(top));
        FirstReading Behind(params Obstacle[] shade) => FirstReading.Of(sky, facade, Reflectance.FromFraction(0.4), shade: shade);
        var open = Behind();
        Assert.True(open.Light.Direct.Lux > open.Light.FromSky.Lux);
        Assert.Equal(open, Behind(Mill(sun + 20, 85), Mill(sun, sky.SunPosition.Elevation.Degrees - 1)));
        var shaded = Behind(Mill(sun + 20, 85), Mill(sun, sky.SunPosition.Elevation.Degrees + 1));
        Assert.Equal(open.Light with { Direct = default }, shaded.Light);
        Assert.Equal(open.Luminance.CandelasPerSquareMetre * (1 - (open.Light.Direct.Lux / open.Light.Total.Lux)), shaded.Luminance.CandelasPerSquareMetre, 1e-9);
        Assert.Equal((LightColour.Noon, LightColour.OpenShade), (open.Colour, shaded.Colour));
    }

    private static FirstReading Of(SkyLight sky, double bearing) => FirstReading.Of(sky, Facade.Facing(Angle.FromDegrees(bearing)), Reflectance.FromFraction(0.4));
}
