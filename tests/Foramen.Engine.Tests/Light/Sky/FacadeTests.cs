using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class FacadeTests
{
    // Plane trigonometry by hand: square on, along the wall, from behind, at 60° aside, from overhead, and a roof of 30° that a sun of 60° stands square over.
    [Theory]
    [InlineData(180, 90, 180, 0, 90)]
    [InlineData(180, 90, 90, 0, 0)]
    [InlineData(180, 90, 0, 0, -90)]
    [InlineData(90, 90, 30, 0, 30)]
    [InlineData(90, 90, 90, 60, 30)]
    [InlineData(0, 0, 77, 90, 90)]
    [InlineData(0, 0, 77, 20, 20)]
    [InlineData(250, 30, 250, 60, 90)]
    [InlineData(250, 30, 70, 60, 30)]
    [InlineData(250, 180, 70, 60, -60)]
    [InlineData(250, 90, 250, 60, 30)]
    public void Light_meets_a_plane_at_its_angle(double bearing, double tilt, double azimuth, double elevation, double angle)
    {
        var plane = Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt));
        var light = new SkyPosition(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation));
        Assert.Equal(Math.Sin(angle * Math.PI / 180), plane.CosineTo(light), 1e-12);
        Assert.Equal(angle, plane.RakingAngle(light).Degrees, 1e-5);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(360, 180)]
    public void Planes_at_the_edges_are_planes(double bearing, double tilt)
    {
        var plane = Facade.Leaning(Angle.FromDegrees(bearing), Angle.FromDegrees(tilt));
        Assert.Equal((bearing, tilt), (plane.Bearing.Degrees, plane.Tilt.Degrees));
    }

    [Fact]
    public void A_wall_is_upright() => Assert.Equal(90, Facade.Facing(Angle.FromDegrees(12)).Tilt.Degrees);

    [Fact]
    public void A_plane_that_leans_the_other_way_is_turned_about() => Assert.Throws<RefusalException>(() => Facade.Leaning(Angle.Zero, Angle.FromDegrees(-1)));
}
