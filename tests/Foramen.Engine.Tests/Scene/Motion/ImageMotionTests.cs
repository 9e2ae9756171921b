using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>Image speed v·f/s, arcs and dwell, against numbers worked out by hand from geometry (reference sheet on sensitometry, 9.3 and 9.4).</summary>
public class ImageMotionTests
{
    private static readonly Length F60 = Length.FromMillimetres(60);

    // A walker at 1.4 m/s, 10 m away, f 60 mm: 0.14 rad/s, 8.4 mm each second; 0.5 m wide: 0.357 s on a point, 0.00298 of two minutes.
    [Fact]
    [Source("euclid", "similar triangles", Basis.Worked)]
    public void A_walker_goes_as_far_as_geometry_says()
    {
        var walker = new Passers { Width = M(0.5), Speed = MotionSpeed.FromMetresPerSecond(1.4), Distance = M(10), LuminanceRatio = 0 };
        Assert.Equal(8.4, walker.ImagePath(F60, S(1)).Millimetres, 1e-9);
        Assert.Equal(0.357, walker.Dwell!.Value.Seconds, 0.0005);
        Assert.Equal(0.00298, walker.During(S(120)).Share, 0.000005);
        Assert.Equal(0.357, walker.During(S(120)).AtATime.Seconds, 0.0005);
        Assert.Equal((0.2, 1.0, true), (walker.During(S(0.2)).AtATime.Seconds, walker.During(S(0.2)).Share, walker.During(S(0.2)).SoftEdged));
        Assert.Equal(0.036, ImageMotion.StillFor(Length.FromMillimetres(0.3), walker.Speed, walker.Distance, F60)!.Value.Seconds, 0.0005);
    }

    // A cloud at 10 m/s, 1000 m up, f 60 mm: 0.6 mm/s, 72 mm in two minutes.
    [Fact]
    [Source("euclid", "similar triangles", Basis.Worked)]
    public void A_cloud_overhead_is_drawn_out_over_most_of_a_sheet()
        => Assert.Equal(72, ImageMotion.Path(MotionSpeed.FromMetresPerSecond(10), M(1000), F60, S(120)).Millimetres, 1e-9);

    // The sky turns 15.04° an hour at its equator (a turn in a sidereal day); at 60° half of it.
    [Fact]
    [Source("meeus-1998", "sidereal day", Basis.Worked)]
    public void Stars_trail_as_the_sky_turns()
    {
        Assert.Equal(15.04, SkyTrail.OfStar(Angle.Zero, S(3600)).Degrees, 0.005);
        Assert.Equal(7.52, SkyTrail.OfStar(Angle.FromDegrees(60), S(3600)).Degrees, 0.005);
    }

    [Fact]
    public void What_stands_still_stays()
    {
        var sitter = new Passers { Width = M(0.5), Speed = default, Distance = M(10), LuminanceRatio = 0.2 };
        Assert.True(sitter.StandStill);
        Assert.Null(sitter.Dwell);
        Assert.Equal(1, sitter.During(S(60)).Share);
        Assert.False(sitter.During(S(60)).SoftEdged);
        Assert.Equal(0, sitter.ImagePath(F60, S(60)).Millimetres);
        Assert.Null(ImageMotion.StillFor(F60, sitter.Speed, sitter.Distance, F60));
    }

    // Share × time is the time covered, however it is split.
    [Fact]
    public void Covered_time_does_not_depend_on_the_exposure()
        => Gen.Select(Gen.Double[0.1, 3], Gen.Double[0.5, 20], Gen.Int[1, 20], Gen.Double[600, 6000]).Sample((width, speed, number, time) =>
        {
            var passers = new Passers { Width = M(width), Speed = MotionSpeed.FromMetresPerSecond(speed), Distance = M(20), LuminanceRatio = 0.5, Number = number };
            Assert.Equal(number * width / speed, passers.During(S(time)).Share * time, 1e-6);
        });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void Nonsense_is_refused(double value)
    {
        Assert.Throws<RefusalException>(() => new Passers { Width = M(1), Speed = default, Distance = M(10), LuminanceRatio = value });
        Assert.Throws<RefusalException>(() => Covering.Of(value, 1, default));
        Assert.Throws<RefusalException>(() => MotionSpeed.FromKilometresPerHour(value));
    }

    [Fact]
    public void Too_near_or_beyond_the_pole_is_refused()
    {
        Assert.Throws<RefusalException>(() => ImageMotion.Path(MotionSpeed.FromMetresPerSecond(1), M(0.01), F60, S(1)));
        Assert.Throws<RefusalException>(() => SkyTrail.OfStar(Angle.FromDegrees(91), S(1)));
    }

    private static Length M(double metres) => Length.FromMetres(metres);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
