using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;
using Foramen.Engine.Tests.Exposure.Motion;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>Trails by hand: hole 0.35, spot 0.45, f 60; the sky turns 7.292·10⁻⁵ rad each second.</summary>
public class SkyBodyTests
{
    private static readonly Length Hole = Length.FromMillimetres(0.35);
    private static readonly Length Spot = Length.FromMillimetres(0.45);
    private static readonly Length Focal = Length.FromMillimetres(60);

    // 0.45/(60·7.2921e-5) = 102.9 s on a point; 2.54e-6·(0.35/0.45)² = 1.537e-6 lx.
    [Fact]
    [Source("kinematics", "15.04° an hour", Basis.Worked)]
    public void A_star_at_the_equator_of_the_sky_lies_on_a_point_for_102_9_s()
    {
        var star = SkyBody.Star(0);
        Assert.Equal(102.85, star.OnPoint(Spot, Focal, Angle.Zero, Duration.FromSeconds(3600)).Seconds, 0.05);
        Assert.Equal(205.7, star.OnPoint(Spot, Focal, Angle.FromDegrees(60), Duration.FromSeconds(3600)).Seconds, 0.1);
        Assert.Equal(1.537e-6, star.InImage(Hole, Spot, Focal).Lux, 1e-9);
    }

    // The moon's disc is 60·0.00904 = 0.5425 mm, with the spot 0.7048: (0.35/0.7048)²·0.25 = 0.0617 lx for 161.1 s.
    [Fact]
    [Source("lighting-textbook", "distance law", Basis.Worked)]
    public void The_moon_lies_on_a_point_for_161_s()
    {
        Assert.Equal(0.7048, SkyBody.FullMoon.ImageDiameter(Spot, Focal).Millimetres, 0.0002);
        Assert.Equal(0.06165, SkyBody.FullMoon.InImage(Hole, Spot, Focal).Lux, 2e-5);
        Assert.Equal(161.1, SkyBody.FullMoon.OnPoint(Spot, Focal, Angle.Zero, Duration.FromSeconds(3600)).Seconds, 0.1);
    }

    // Five magnitudes are a factor of a hundred, by definition.
    [Fact]
    [Source("pogson-1856", Basis.Printed)]
    public void Five_magnitudes_are_a_hundredth()
        => Gen.Double[-5, 3].Sample(m => Assert.Equal(100, SkyBody.Star(m).Light.Lux / SkyBody.Star(m + 5).Light.Lux, 1e-6));

    [Fact]
    public void Near_the_pole_a_star_stands_and_a_short_exposure_holds_it()
    {
        Assert.Equal(3600, SkyBody.Star(2).OnPoint(Spot, Focal, Angle.FromDegrees(90), Duration.FromSeconds(3600)).Seconds, 1e-6);
        Assert.Equal(10, SkyBody.FullMoon.OnPoint(Spot, Focal, Angle.Zero, Duration.FromSeconds(10)).Seconds, 1e-9);
        Assert.Throws<RefusalException>(() => SkyBody.Star(20));
    }

    // On black, before a dark sky: the sun burns its line, the moon draws one on a fast paper, and no star does.
    [Fact]
    public void The_sun_burns_a_line_and_stars_leave_none()
    {
        var response = StraightCurve.Response(2, 1);
        var dark = new MotionOnPaper(response, Illuminance.FromLux(1e-4), new SheetExposure(Duration.FromSeconds(3600), default), FlashSetup.None);
        var camera = CameraExamples.Flat(0.35, 60, 127, 102);
        Assert.True(dark.Trace(SkyBody.Sun, Angle.Zero, camera, Spot).IsSeen);
        Assert.True(dark.Trace(SkyBody.FullMoon, Angle.Zero, camera, Spot).IsSeen);
        Assert.False(dark.Trace(SkyBody.Star(0), Angle.Zero, camera, Spot).IsSeen);

        // More light, more trace.
        var star = Math.Abs(dark.Trace(SkyBody.Star(-4), Angle.Zero, camera, Spot).Change);
        Assert.True(star > Math.Abs(dark.Trace(SkyBody.Star(0), Angle.Zero, camera, Spot).Change));
    }
}
