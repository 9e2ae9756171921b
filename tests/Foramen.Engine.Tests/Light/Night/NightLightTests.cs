using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.Night;

/// <summary>Light at night against handbook values (from memory) and the photometric distance law.</summary>
public class NightLightTests
{
    // A full moon high in the sky gives some 0.25 lx on level ground (handbook value, from memory): grass and stone of 18 % have 0.0143 cd/m², EV −3.1 at K 12.5.
    // The published exposure guide (ANSI PH2.7-1986, from memory) gives −3 to −2 for a landscape under it.
    [Fact]
    [Source("ansi-ph2.7-1986", Basis.Memory)]
    public void A_landscape_under_the_full_moon_meters_as_the_guide_says()
    {
        var landscape = NightScene.Find("full moon");
        var worked = LightMeter.Usual.ExposureValueOf(LightMeter.LuminanceOfCard(Illuminance.FromLux(0.25), Reflectance.FromFraction(0.18))).AtIso100;
        Assert.Equal(-3.1, worked, 0.05);
        Assert.InRange(landscape.Lowest.AtIso100 - worked, -0.5, 0.5);
    }

    // 10.8·10⁴·10^(−0.4·22) = 1.71·10⁻⁴ cd/m²; a natural moonless sky has about 2·10⁻⁴ (CIE handbooks, from memory).
    [Fact]
    [Source("cie-night-sky", Basis.Memory)]
    public void A_natural_night_sky_has_two_ten_thousandths_of_a_candela() => Assert.Equal(1.71e-4, NightGround.NaturalSky.CandelasPerSquareMetre, 0.01e-4);

    [Theory]
    [InlineData("")]
    [InlineData("s")]
    [InlineData("noon")]
    public void A_scene_that_is_not_one_is_refused_with_the_names_there_are(string text)
        => Assert.Contains("fair", Assert.Throws<RefusalException>(() => NightScene.Find(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Out_of_range_is_refused()
    {
        Assert.Throws<RefusalException>(() => NightGround.GlowOf(30));
    }
}
