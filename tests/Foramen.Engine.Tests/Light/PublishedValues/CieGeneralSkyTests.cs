using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>Relations of ISO 15469:2004 / CIE S 011 and of the skies it grew from.</summary>
public class CieGeneralSkyTests
{
    public static TheoryData<int> Types => [.. Enumerable.Range(1, 16)];

    [Theory]
    [MemberData(nameof(Types))]
    [Source("iso-15469")]
    public void Every_type_is_relative_to_the_zenith(int type)
        => Assert.Equal(1, CieGeneralSky.OfNumber(type).RelativeLuminance(Angle.FromDegrees(90), Angle.FromDegrees(12), Angle.FromDegrees(40)), 1e-12);

    // Type 1 takes the place of the traditional overcast sky: three to one from zenith to horizon, and on level ground nearly 7π/9 of the zenith.
    [Fact]
    [Source("iso-15469")]
    [Source("moon-spencer-1942")]
    public void Type_one_takes_the_place_of_the_overcast_sky()
    {
        Assert.Equal(1.0 / 3, CieGeneralSky.OfNumber(1).RelativeLuminance(Angle.Zero, default, Angle.FromDegrees(30)), 0.005);
        var sky = SkyLight.At(new DateTimeOffset(2024, 6, 20, 9, 0, 0, TimeSpan.Zero), Skies.Basin, SkyCover.Overcast.SpreadAs(CieGeneralSky.OfNumber(1)));
        Assert.Equal(7 * Math.PI / 9, sky.DiffuseHorizontal.Lux / sky.ZenithLuminance.CandelasPerSquareMetre, 0.05);
    }

    // An even sky of luminance L lights level ground with πL and an upright wall with half of that; any textbook of lighting.
    [Fact]
    [Source("lighting-textbook", "even sky", Basis.Worked)]
    public void Type_five_is_even()
    {
        var sky = SkyLight.At(new DateTimeOffset(2024, 6, 20, 9, 0, 0, TimeSpan.Zero), Skies.Basin, SkyCover.Overcast.SpreadAs(CieGeneralSky.OfNumber(5)));
        Assert.Equal(Math.PI * sky.ZenithLuminance.CandelasPerSquareMetre, sky.DiffuseHorizontal.Lux, sky.DiffuseHorizontal.Lux * 1e-9);
        Assert.Equal(0.5, sky.On(Facade.Facing(Angle.FromDegrees(200))).FromSky.Lux / sky.DiffuseHorizontal.Lux, 1e-9);
        Assert.Equal(sky.ZenithLuminance.CandelasPerSquareMetre, sky.LuminanceAt(Angle.FromDegrees(3), Angle.Zero).CandelasPerSquareMetre, 1e-6);
    }

    // R. Kittler's clear sky of 1967, standardised by the CIE in 1973: (0.91 + 10 exp(−3χ) + 0.45 cos²χ)(1 − exp(−0.32/sin γ)) over the same at the
    // zenith, 0.274 for the second factor. Type 12 has its constants; they were printed to two places, hence 1 %.
    [Fact]
    [Source("kittler-1967")]
    public void Type_twelve_is_the_clear_sky_of_1973()
    {
        foreach (var (sun, elevation, azimuth) in new[] { (30.0, 20.0, 0.0), (30, 60, 90), (30, 10, 180), (60, 45, 45), (10, 5, 10), (60, 60, 0) })
        {
            var (s, g, a) = (sun * Math.PI / 180, elevation * Math.PI / 180, azimuth * Math.PI / 180);
            var distance = Math.Acos(Math.Min(1, (Math.Sin(s) * Math.Sin(g)) + (Math.Cos(s) * Math.Cos(g) * Math.Cos(a))));
            var zenith = (Math.PI / 2) - s;
            double Around(double chi) => 0.91 + (10 * Math.Exp(-3 * chi)) + (0.45 * Math.Cos(chi) * Math.Cos(chi));
            var published = Around(distance) * (1 - Math.Exp(-0.32 / Math.Sin(g))) / (Around(zenith) * 0.274);
            var ours = CieGeneralSky.Clear.RelativeLuminance(Angle.FromDegrees(elevation), Angle.FromDegrees(azimuth), Angle.FromDegrees(sun));
            Assert.Equal(published, ours, published * 0.01);
        }
    }

    // Those without an indicatrix, c and e nought: 1, 3, 5 and the traditional sky look the same all around.
    [Fact]
    [Source("iso-15469", "table 1", Basis.Memory)]
    public void Four_types_look_the_same_all_around()
        => Assert.Equal([1, 3, 5, 16], CieGeneralSky.Types.Where(type => type.IsSymmetric).Select(type => type.Number));

    [Theory]
    [InlineData(-1, 30)]
    [InlineData(91, 30)]
    [InlineData(30, -1)]
    [InlineData(30, 91)]
    [OwnRule]
    public void A_sky_is_over_the_horizon(double elevation, double sun)
        => Assert.Throws<RefusalException>(() => CieGeneralSky.Clear.RelativeLuminance(Angle.FromDegrees(elevation), default, Angle.FromDegrees(sun)));

    // A plane that leans sees (1 + cos tilt)/2 of an even sky; any textbook of lighting or of solar energy.
    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(150)]
    [Source("lighting-textbook", "even sky", Basis.Worked)]
    public void A_leaning_plane_sees_its_share_of_an_even_sky(double tilt)
    {
        var share = SkyDome.On(Facade.Leaning(Angle.FromDegrees(200), Angle.FromDegrees(tilt)), CieGeneralSky.OfNumber(5), 0.5, 1) / Math.PI;
        Assert.Equal((1 + Math.Cos(tilt * Math.PI / 180)) / 2, share, 0.002);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [OwnRule]
    public void Other_numbers_are_refused(int number) => Assert.Throws<RefusalException>(() => CieGeneralSky.OfNumber(number));
}
