using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class SunStandingTests
{
    private static readonly Gen<SkyPosition> AnyPlace = Gen.Select(Gen.Double[0, 360], Gen.Double[0.1, 89]).Select(Place);

    // The weightiest first: down, in the picture, on the facade (raking under 20°), and of what does not shine on it either behind or shaded.
    [Theory]
    [InlineData(false, true, true, 10, SunStandingKind.Down)]
    [InlineData(true, true, true, 10, SunStandingKind.InPicture)]
    [InlineData(true, false, true, 19.9, SunStandingKind.Grazing)]
    [InlineData(true, false, true, 20, SunStandingKind.OnFacade)]
    [InlineData(true, false, false, 10, SunStandingKind.Shaded)]
    [InlineData(true, false, false, 0, SunStandingKind.BehindFacade)]
    [InlineData(true, false, false, -10, SunStandingKind.BehindFacade)]
    public void The_weightiest_is_said(bool up, bool inPicture, bool onFacade, double raking, SunStandingKind kind)
    {
        var standing = new SunStanding(Place(0, 1), Angle.Zero, Angle.FromDegrees(raking), up, inPicture, onFacade, false);
        Assert.Equal(kind, standing.Kind);
        Assert.Equal(onFacade && raking < 20, standing.IsGrazing);
    }

    // A wall to the south and the sun in the west: shone on by it unless a house stands between.
    [Fact]
    public void A_house_between_takes_the_sun_from_the_facade()
    {
        var aim = FrameAim.Towards(BoxA, Angle.Zero);
        var (south, sun) = (Facade.Facing(Angle.FromDegrees(180)), Place(225, 20));
        var house = Obstacle.Of("house", Angle.FromDegrees(225), Length.FromMetres(10), Length.FromMetres(10), Length.FromMetres(10));
        var elsewhere = Obstacle.Of("tree", Angle.FromDegrees(100), Length.FromMetres(10), Length.FromMetres(10), Length.FromMetres(10));
        Assert.True(aim.Standing(sun, south, [elsewhere]).OnFacade);
        var shaded = aim.Standing(sun, south, [elsewhere, house]);
        Assert.False(shaded.OnFacade);
        Assert.Equal(SunStandingKind.Shaded, shaded.Kind);
        Assert.Equal(30, aim.Standing(Place(180, 60), south).RakingAngle.Degrees, 1e-9);
    }

    // At the horizon it is not up, and then it shines on nothing.
    [Fact]
    public void Below_the_horizon_nothing_is_lit() => Gen.Select(Gen.Double[0, 360], Gen.Double[-60, 0]).Sample((azimuth, elevation) =>
    {
        var standing = FrameAim.Towards(BoxA.TiltedTo(Angle.FromDegrees(-20)), Angle.FromDegrees(azimuth)).Standing(Place(azimuth, elevation), Facade.Facing(Angle.FromDegrees(azimuth)));
        Assert.Equal((false, false, false, false), (standing.IsUp, standing.InPicture, standing.OnFacade, standing.OnHole));
    });

    // The vector of a place in the sky by the definition of azimuth and elevation, seen from axes to the right of the bearing, and up and forwards after the tilt.
    [Fact]
    public void A_place_in_the_sky_lies_where_the_camera_sees_it() => Gen.Select(AnyPlace, Gen.Double[0, 360], Gen.Double[-80, 80]).Sample((place, bearing, tilt) =>
    {
        var (a, e) = (place.Azimuth.Radians, place.Elevation.Radians);
        var (east, north, up) = (Math.Cos(e) * Math.Sin(a), Math.Cos(e) * Math.Cos(a), Math.Sin(e));
        var (b, t) = (bearing * Math.PI / 180, tilt * Math.PI / 180);
        var ahead = (east * Math.Sin(b)) + (north * Math.Cos(b));
        var aim = FrameAim.Towards(BoxA.TiltedTo(Angle.FromDegrees(tilt)), Angle.FromDegrees(bearing));
        var direction = aim.DirectionTo(place);
        Assert.Equal((east * Math.Cos(b)) - (north * Math.Sin(b)), direction.X, 1e-9);
        Assert.Equal((up * Math.Cos(t)) - (ahead * Math.Sin(t)), direction.Y, 1e-9);
        Assert.Equal((up * Math.Sin(t)) + (ahead * Math.Cos(t)), direction.Z, 1e-9);
        Assert.Equal(Math.Cos(aim.OffAxis(place).Radians), aim.AxisCosine(place), 1e-9);
    });

    // Inside the picture the distance is less than nothing, and only there; behind the camera it is the farthest there is.
    [Fact]
    public void Outside_the_picture_is_where_no_point_of_the_sheet_looks() => Gen.Select(AnyCamera, AnyPlace, Gen.Double[0, 360], Gen.Double[-40, 40]).Sample((camera, place, bearing, tilt) =>
    {
        var aim = FrameAim.Towards(camera.TiltedTo(Angle.FromDegrees(tilt)), Angle.FromDegrees(bearing));
        var away = aim.ClearanceDegrees(place);
        if (aim.OffAxis(place).Degrees < 89)
        {
            Assert.Equal(camera.PointOf(aim.DirectionTo(place)) is not null, away <= 0);
        }
        else if (aim.OffAxis(place).Degrees > 90)
        {
            Assert.Equal(180, away);
        }
    });

    // By hand: a half sheet of 50 mm at 60 mm; what lies 45° aside falls on 60 mm, ten too far: atan(10/60) = 9.46°. Half as high as wide up: 40 mm.
    [Theory]
    [InlineData(45, 0.0, 9.462)]
    [InlineData(315, 0.0, 9.462)]
    [InlineData(0, 45, 18.435)]
    [InlineData(0, 0.0, -33.690)]
    [InlineData(180, 10, 180)]
    public void How_far_outside_by_hand(double azimuth, double elevation, double degrees)
        => Assert.Equal(degrees, FrameAim.Towards(Flat(0.3, 60, 100, 80), Angle.Zero).ClearanceDegrees(Place(azimuth, elevation)), 0.001);

    // A degree counts as within: tan a = 50/60 + tan 1° is 40.39°.
    [Theory]
    [InlineData(40.35, true)]
    [InlineData(40.45, false)]
    public void A_degree_beyond_the_edge_is_still_in_the_picture(double azimuth, bool inPicture)
        => Assert.Equal(inPicture, FrameAim.Towards(Flat(0.3, 60, 100, 80), Angle.Zero).Standing(Place(azimuth, 0.01), Facade.Facing(Angle.Zero)).InPicture);

    // A box on its side sees what a box does whose sheet is turned; its hole goes round with it.
    [Fact]
    public void On_its_side_it_is_the_turned_sheet() => Gen.Select(AnyPlace, Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[-30, 30]).Sample((place, footX, footY, tilt) =>
    {
        var side = FrameAim.Towards(Flat(0.3, 60, 100, 80, 0, footX, footY).TiltedTo(Angle.FromDegrees(tilt)), Angle.FromDegrees(10), SheetFormat.Upright);
        var turned = FrameAim.Towards(Flat(0.3, 60, 80, 100, 0, -footY, footX).TiltedTo(Angle.FromDegrees(tilt)), Angle.FromDegrees(10));
        Assert.Equal(turned.ClearanceDegrees(place), side.ClearanceDegrees(place), 1e-9);
    });

    // A square sheet stands as it is told, and is not turned for it.
    [Fact]
    public void A_square_sheet_needs_no_turning() => AnyPlace.Sample(place =>
    {
        double Away(SheetFormat? format) => FrameAim.Towards(Flat(0.3, 60, 90, 90, 0, 12, -7), Angle.FromDegrees(100), format).ClearanceDegrees(place);
        Assert.Equal(Away(null), Away(SheetFormat.Upright));
        Assert.Equal(Away(null), Away(SheetFormat.Level));
    });

    private static SkyPosition Place(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation));
}
