using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class FacadeLightCurveTests
{
    [Fact]
    public void The_table_agrees_with_the_whole_integral() => Gen.Select(Gen.Int[0, 2], Gen.Double[0, 360], Gen.Int[0, 365 * 24]).Sample(
        (cover, bearing, hour) =>
        {
            var facade = Facade.Facing(Angle.FromDegrees(bearing));
            var instant = new DateTimeOffset(2024, 1, 1, 0, 0, 0, TimeSpan.Zero).AddHours(hour);
            var light = SkyLight.At(instant, Basin, Skies.Covers[cover]);

            // The table leaves moonlight out.
            if (light.SunPosition.TrueElevation.Degrees > -10 && light.MoonPosition is null)
            {
                var curve = new FacadeLightCurve(facade, Skies.Covers[cover], 0.2);
                var distance = Sun.DistanceAstronomicalUnits(instant);
                var whole = light.On(facade).Total.Lux;
                Assert.Equal(whole, curve.Lux(light.SunPosition, SkyLight.SolarConstantLux / distance / distance, false), (whole * 0.025) + 0.01);
            }
        },
        iter: Samples.Of(200));

    [Fact]
    public void In_shadow_all_but_the_direct_light_is_left() => Gen.Select(Gen.Int[0, 1], Gen.Double[0, 360], Gen.Double[0, 180], Gen.Int[0, 365 * 24]).Sample(
        (cover, bearing, tilt, hour) =>
        {
            var facade = Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt));
            var instant = new DateTimeOffset(2024, 1, 1, 0, 0, 0, TimeSpan.Zero).AddHours(hour);
            var light = SkyLight.At(instant, Basin, Skies.Covers[cover]);
            var curve = new FacadeLightCurve(facade, Skies.Covers[cover], 0.2);
            var distance = Sun.DistanceAstronomicalUnits(instant);
            double Lux(bool shaded) => curve.Lux(light.SunPosition, SkyLight.SolarConstantLux / distance / distance, shaded);
            if (light.MoonPosition is not null && light.SunPosition.Elevation.Degrees > 0)
            {
                // For some minutes the air lifts the sun over the horizon, and the moon is up too: both are in the one, the sun alone in the other.
                return;
            }

            var direct = light.MoonPosition is null ? light.On(facade).Direct.Lux : 0;
            Assert.Equal(direct, Lux(false) - Lux(true), (direct * 1e-9) + 1e-6);
        },
        iter: Samples.Of(40));

    // With the sun 12° down and deeper the sky is even: a plane gets (1 + cos tilt)/2 of it, and (1 − cos tilt)/2 of the fifth that the ground throws back.
    [Theory]
    [InlineData(90)]
    [InlineData(0)]
    [InlineData(60)]
    [InlineData(150)]
    public void At_night_a_plane_gets_its_share_of_an_even_sky(double tilt)
    {
        var (sun, cosine) = (Standing(300, -15), Math.Cos(tilt * Math.PI / 180));
        var level = SkyCover.Clear.DiffuseHorizontalLux(-15, 127_500);
        var curve = new FacadeLightCurve(Facade.Leaning(Angle.FromDegrees(300), Angle.FromDegrees(tilt)), SkyCover.Clear, 0.2);
        Assert.Equal(level * ((1 + cosine) + (0.2 * (1 - cosine))) / 2, curve.Lux(sun, 127_500, false), level * 1e-9);
    }

    // The last row and the last column of the table: straight overhead, and right behind the wall.
    [Theory]
    [InlineData(120, 90, 120, 89.999)]
    [InlineData(300, 40, 299.999, 40)]
    [InlineData(300, 90, 120, 90)]
    public void The_table_is_read_to_its_ends(double azimuth, double elevation, double azimuthBeside, double elevationBeside)
    {
        var curve = new FacadeLightCurve(Facade.Facing(Angle.FromDegrees(120)), SkyCover.Clear, 0.2);
        var (at, beside) = (curve.Lux(Standing(azimuth, elevation), 127_500, true), curve.Lux(Standing(azimuthBeside, elevationBeside), 127_500, true));
        Assert.Equal(beside, at, at * 1e-3);
    }

    private static SkyPosition Standing(double azimuth, double elevation)
        => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation));
}
