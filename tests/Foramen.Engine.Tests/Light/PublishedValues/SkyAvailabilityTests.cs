using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>Light of the sky against published figures.</summary>
public class SkyAvailabilityTests
{
    // Illuminating Engineering Society, Lighting Handbook, daylight availability: Edn = 127.5 exp(−c m), c 0.21 clear and 0.80 partly cloudy; on level
    // ground 0.8 + 15.5 sin^0.5 h, 0.3 + 45 sin h, 0.3 + 21 sin h klx (from memory). Worked by hand for h = 30° with m = 1.994 and h = 60° with
    // m = 1.154; the Sun's distance is taken out.
    [Theory]
    [InlineData("clear", 30, 83.9, 11.76)]
    [InlineData("clear", 60, 100.1, 15.22)]
    [InlineData("hazy", 30, 25.9, 22.80)]
    [InlineData("hazy", 60, 50.6, 39.27)]
    [InlineData("overcast", 30, 0, 10.80)]
    [InlineData("overcast", 60, 0, 18.49)]
    [Source("ies-handbook", "daylight availability", Basis.Memory)]
    public void The_handbooks_three_skies(string sky, double elevation, double direct, double diffuse)
    {
        var instant = InstantWithSunAt(elevation);
        var light = SkyLight.At(instant, Skies.Basin, SkyCover.Find(sky), air: Airless);
        var scale = 1 / Math.Pow(Sun.DistanceAstronomicalUnits(instant), 2);
        Assert.Equal(direct, light.DirectNormal.Lux / 1000 / scale, 0.3);
        Assert.Equal(diffuse, light.DiffuseHorizontal.Lux / 1000 / scale, 0.05);
    }

    // P. M. Janiczek and J. A. DeYoung, US Naval Observatory Circular 171 (1987): light on level ground in clear air, fitted to measurements; an independent
    // source for the same quantity. Within 0.4 stop from 10° up; lower the two airs differ more, as airs do.
    [Fact]
    [Source("janiczek-deyoung-1987", Basis.Memory)]
    public void Clear_light_agrees_with_the_naval_observatorys()
    {
        for (var elevation = 10; elevation <= 60; elevation += 5)
        {
            var light = SkyLight.At(InstantWithSunAt(elevation), Skies.Basin, SkyCover.Clear, air: Airless);
            var published = Twilight.ClearHorizontal(Angle.FromDegrees(elevation));
            Assert.InRange(Math.Log2(light.GlobalHorizontal.Lux / published.Lux), -0.4, 0.4);
        }
    }

    // Explanatory Supplement to the Astronomical Almanac (1992), section on rise, set and twilight: on level ground about 3.4 lx at the end of civil
    // twilight, 0.008 lx of nautical, 0.0006 lx of astronomical (from memory); some 400 to 700 lx at sunset.
    [Theory]
    [InlineData(-0.833, 400, 700)]
    [InlineData(-6, 3.3, 3.6)]
    [InlineData(-12, 0.0075, 0.0085)]
    [InlineData(-18, 0.00055, 0.0007)]
    [InlineData(-40, 0.00055, 0.0007)]
    [Source("explanatory-supplement-1992", "rise, set and twilight", Basis.Memory)]
    public void Twilight_at_its_limits(double elevation, double least, double most)
        => Assert.InRange(Twilight.ClearHorizontal(Angle.FromDegrees(elevation)).Lux, least, most);

    // The pieces were published as one curve, so they must join; a coefficient remembered wrongly would show.
    [Theory]
    [InlineData(20)]
    [InlineData(5)]
    [InlineData(-0.8)]
    [InlineData(-5)]
    [InlineData(-12)]
    [Source("janiczek-deyoung-1987", Basis.Memory)]
    public void The_pieces_join(double at)
        => Assert.InRange(
            Twilight.ClearHorizontal(Angle.FromDegrees(at + 1e-6)).Lux / Twilight.ClearHorizontal(Angle.FromDegrees(at - 1e-6)).Lux, 0.97, 1.03);

    // The same circular for a full moon overhead: lg E = −1.95 + 4.06 − 4.24 + 1.56 = −0.57, 0.27 lx, at mean distance.
    [Fact]
    [Source("janiczek-deyoung-1987", Basis.Memory)]
    public void Full_moonlight()
    {
        var (instant, place) = (new DateTimeOffset(2024, 1, 25, 17, 54, 0, TimeSpan.Zero), GeographicPosition.FromDegrees(18, 90));
        var light = SkyLight.At(instant, place, SkyCover.Clear);
        Assert.True(light.MoonPosition!.Value.Elevation.Degrees > 80);
        var nearer = Math.Pow(Moon.MeanDistanceKilometres * 1000 / Moon.Distance(instant).Metres, 2);
        Assert.InRange(Math.Log2(light.GlobalHorizontal.Lux / nearer / 0.27), -0.3, 0.3);
    }

    // F. Kasten and A. T. Young (1989), table of relative optical air mass; Bemporad's older table agrees to 0.1 % above 10° (both from memory).
    [Theory]
    [InlineData(90, 1.000, 0.001)]
    [InlineData(60, 1.154, 0.001)]
    [InlineData(30, 1.994, 0.002)]
    [InlineData(20, 2.904, 0.005)]
    [InlineData(10, 5.60, 0.03)]
    [InlineData(5, 10.39, 0.1)]
    [InlineData(0, 38.0, 0.15)]
    [Source("kasten-young-1989", "table", Basis.Memory)]
    public void Air_mass(double elevation, double mass, double tolerance) => Assert.Equal(mass, AirMass.At(Angle.FromDegrees(elevation)), tolerance);

    // "The sunny sixteen": a front-lit subject in full sun is exposed right with 1/ISO s at f/16 (common practice), which a meter of K 12.5 shows for
    // 3200 cd/m² of middle grey. The rule leaves half a stop for safety, so 0.7 stop either way.
    [Fact]
    [Source("common-practice")]
    public void A_grey_wall_in_the_sun()
    {
        var instant = InstantWithSunAt(45);
        var light = SkyLight.At(instant, Skies.Basin, SkyCover.Clear);
        var reading = FirstReading.Of(light, Facade.Facing(light.SunPosition.Azimuth), Reflectance.FromFraction(0.18));
        Assert.InRange(Math.Log2(reading.Luminance.CandelasPerSquareMetre / 3200), -0.7, 0.7);
        Assert.InRange(reading.Spread.Value, 0.3, 0.6);
        Assert.Equal(LightColour.Noon, reading.Colour);
    }

    private static readonly Atmosphere Airless = new() { PressureHectopascals = 300 };

    /// <summary>When the Sun passes this elevation at the basin on midsummer morning.</summary>
    private static DateTimeOffset InstantWithSunAt(double elevation)
    {
        var (low, high) = (new DateTimeOffset(2024, 6, 20, 2, 0, 0, TimeSpan.Zero), new DateTimeOffset(2024, 6, 20, 11, 40, 0, TimeSpan.Zero));
        for (var i = 0; i < 40; i++)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = Sun.At(middle, Skies.Basin).TrueElevation.Degrees < elevation ? (middle, high) : (low, middle);
        }

        return low;
    }
}
