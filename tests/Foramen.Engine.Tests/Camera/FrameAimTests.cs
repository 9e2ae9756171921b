using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

public class FrameAimTests
{
    private static readonly Gen<double> GenBearing = Gen.Double[0, 360];

    // Spherical law of cosines: cos(off) = sin h sin t + cos h cos t cos(ΔA).
    [Fact]
    public void The_angle_to_the_axis_is_that_of_the_sphere() => Gen.Select(GenBearing, Gen.Double[-89, 89], GenBearing, Gen.Double[0, 89]).Sample(
        (bearing, tilt, azimuth, elevation) =>
        {
            var aim = FrameAim.Towards(Box(tilt), Angle.FromDegrees(bearing));
            var (h, t, a) = (elevation * Math.PI / 180, tilt * Math.PI / 180, (azimuth - bearing) * Math.PI / 180);
            var expected = Math.Acos(Math.Clamp((Math.Sin(h) * Math.Sin(t)) + (Math.Cos(h) * Math.Cos(t) * Math.Cos(a)), -1, 1)) * 180 / Math.PI;
            Assert.Equal(expected, aim.OffAxis(At(azimuth, elevation)).Degrees, 1e-4);
        });

    // A level camera of 63 mm with 127 × 102 mm of paper sees atan(63.5/63) = 45.23° to each side and atan(51/63) = 38.99° up and down.
    [Theory]
    [InlineData(100, 10, SheetFormat.Level, true)]
    [InlineData(144, 0.1, SheetFormat.Level, true)]
    [InlineData(148, 0.1, SheetFormat.Level, false)]
    [InlineData(100, 38, SheetFormat.Level, true)]
    [InlineData(100, 41, SheetFormat.Level, false)]
    [InlineData(100, 41, SheetFormat.Upright, true)]
    [InlineData(144, 0.1, SheetFormat.Upright, false)]
    [InlineData(280, 10, SheetFormat.Level, false)]
    public void The_picture_reaches_as_far_as_the_paper(double azimuth, double elevation, SheetFormat format, bool inPicture)
        => Assert.Equal(inPicture, FrameAim.Towards(Box(0), Angle.FromDegrees(100), format).Standing(At(azimuth, elevation), South).InPicture);

    [Theory]
    [InlineData(180, 30, SunStandingKind.OnFacade)]
    [InlineData(100, 30, SunStandingKind.Grazing)]
    [InlineData(80, 30, SunStandingKind.BehindFacade)]
    [InlineData(355, 20, SunStandingKind.InPicture)]
    [InlineData(180, -3, SunStandingKind.Down)]
    public void Where_the_sun_stands(double azimuth, double elevation, SunStandingKind kind)
        => Assert.Equal(kind, FrameAim.Towards(Box(0), Angle.Zero).Standing(At(azimuth, elevation), South).Kind);

    [Fact]
    public void Light_falls_on_the_hole_from_its_own_half_of_the_sky_unless_shaded()
    {
        var aim = FrameAim.Towards(Box(0), Angle.Zero);
        Assert.True(aim.Standing(At(80, 40), South).OnHole);
        Assert.False(aim.Standing(At(100, 40), South).OnHole);
        Length Metres(double metres) => Length.FromMetres(metres);
        var house = Obstacle.Of("house", Angle.FromDegrees(80), Metres(10), Metres(10), Metres(20));
        Assert.False(aim.Standing(At(80, 40), South, shadeOnHole: [house]).OnHole);
        Assert.True(aim.Standing(At(80, 70), South, shadeOnHole: [house]).OnHole);
    }

    [Theory]
    [InlineData(361)]
    [InlineData(-0.5)]
    public void Bearings_off_the_compass_are_refused(double bearing)
        => Assert.Throws<RefusalException>(() => FrameAim.Towards(Box(0), Angle.FromDegrees(bearing)));

    private static Facade South => Facade.Facing(Angle.FromDegrees(180));

    private static SkyPosition At(double azimuth, double elevation)
        => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation));

    private static PinholeCamera Box(double tilt) => CameraExamples.BoxA.TiltedTo(Angle.FromDegrees(tilt));
}
