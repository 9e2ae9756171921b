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
}
