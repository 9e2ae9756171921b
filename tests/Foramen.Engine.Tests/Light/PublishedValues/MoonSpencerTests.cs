using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// The overcast sky of P. Moon and D. E. Spencer, Illumination from a non-uniform sky, Trans. Illum. Eng. Soc. 37, 707 (1942), and what building
/// physics derives from it.
/// </summary>
[Source("moon-spencer-1942")]
public class MoonSpencerTests
{
    private static readonly CieGeneralSky Overcast = CieGeneralSky.TraditionalOvercast;

    [Fact]
    public void Three_times_as_bright_overhead_as_at_the_horizon()
    {
        Assert.Equal(1, At(90), 1e-12);
        Assert.Equal(1.0 / 3, At(0), 1e-12);

        // (1 + 2 sin 42°)/3: a direction near 42° has the sky's average luminance, 7/9 of the zenith's (daylighting textbooks).
        Assert.Equal(7.0 / 9, At(41.81), 1e-4);
    }

    [Fact]
    public void Level_ground_gets_seven_ninths_of_pi_times_the_zenith()
    {
        var sky = SomeOvercast();
        Assert.Equal(7 * Math.PI / 9 * sky.ZenithLuminance.CandelasPerSquareMetre, sky.On(Facade.Level).FromSky.Lux, sky.DiffuseHorizontal.Lux * 1e-6);
    }

    // The largest vertical sky component is "almost 40 %" (P. J. Littlefair, Site layout planning for daylight and sunlight, BRE 209): 39.6 %.
    [Fact]
    [Source("littlefair-bre-209")]
    public void An_upright_wall_gets_two_fifths_of_level_ground()
    {
        var sky = SomeOvercast();
        Assert.Equal(0.396, sky.On(Facade.Facing(Angle.FromDegrees(77))).FromSky.Lux / sky.DiffuseHorizontal.Lux, 0.0005);
    }

    private static double At(double elevation) => Overcast.RelativeLuminance(Angle.FromDegrees(elevation), Angle.FromDegrees(100), Angle.FromDegrees(30));

    private static SkyLight SomeOvercast() => SkyLight.At(new DateTimeOffset(2024, 6, 20, 9, 0, 0, TimeSpan.Zero), Skies.Basin, SkyCover.Overcast);
}
