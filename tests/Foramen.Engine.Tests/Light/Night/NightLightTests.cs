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

    [Theory]
    [InlineData(13.9)]
    [InlineData(22.6)]
    [InlineData(double.NaN)]
    public void No_sky_is_as_bright_or_as_dark_as_that(double magnitudes) => Assert.Throws<RefusalException>(() => NightGround.GlowOf(magnitudes));

    // Five magnitudes are a hundredfold (N. R. Pogson, 1856).
    [Fact]
    [Source("pogson-1856")]
    public void Five_magnitudes_are_a_hundredfold()
    {
        Assert.Equal(100, NightGround.GlowOf(14).CandelasPerSquareMetre / NightGround.GlowOf(19).CandelasPerSquareMetre, 1e-9);
        Assert.True(NightGround.GlowOf(22.5).CandelasPerSquareMetre < NightGround.NaturalSky.CandelasPerSquareMetre);
    }

    [Fact]
    public void Every_scene_is_found_by_its_whole_name()
    {
        Assert.All(NightScene.Known, scene => Assert.Same(scene, NightScene.Find($" {scene.Name.ToUpperInvariant()} ")));
        Assert.All(NightScene.Known, scene => Assert.Equal(scene.Lowest.AtIso100 + scene.Highest.AtIso100, 2 * scene.Middle.AtIso100));
        Assert.All(NightScene.Known, scene => Assert.True(scene.Lowest.AtIso100 <= scene.Highest.AtIso100));
        Assert.Throws<RefusalException>(() => NightScene.Find(null!));
    }
}
