using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class ObstacleTests
{
    // A wall 20 m wide, 15 m away: atan(10/15) = 33.69° to either side; 15 m high: 45° straight ahead, atan(cos 30°) = 40.89° at 30° aside.
    private static Obstacle Wall => Obstacle.Of("wall", Angle.FromDegrees(350), Metres(15), Metres(20), Metres(15));

    [Theory]
    [InlineData(350, 44.9, true)]
    [InlineData(350, 45.1, false)]
    [InlineData(20, 40.8, true)]
    [InlineData(20, 41.0, false)]
    [InlineData(23.6, 1, true)]
    [InlineData(23.8, 1, false)]
    [InlineData(316.4, 1, true)]
    [InlineData(316.2, 1, false)]
    [InlineData(170, 1, false)]
    public void It_hides_what_stands_behind_it(double azimuth, double elevation, bool hidden)
        => Assert.Equal(hidden, Wall.Hides(new SkyPosition(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation))));

    [Theory]
    [InlineData(0, 0.1, 0, 0)]
    [InlineData(360, 100_000, 100_000, 10_000)]
    public void Obstacles_at_the_edges_are_taken(double bearing, double distance, double width, double height)
    {
        var thing = Obstacle.Of("  ", Angle.FromDegrees(bearing), Metres(distance), Metres(width), Metres(height));
        Assert.Equal((bearing, distance, width, height), (thing.Bearing.Degrees, thing.Distance.Metres, thing.Width.Metres, thing.Height.Metres));
        Assert.Equal("obstacle", thing.Name);
        Assert.Equal("tower", Obstacle.Of(" tower ", Angle.Zero, Metres(1), Metres(1), Metres(1)).Name);
    }

    [Fact]
    public void Obstacles_beyond_all_measure_are_refused()
    {
        Assert.Throws<RefusalException>(() => Obstacle.Of("sea", Angle.Zero, Metres(100_001), Metres(1), Metres(1)));
        Assert.Throws<RefusalException>(() => Obstacle.Of("sea", Angle.Zero, Metres(1), Metres(100_001), Metres(1)));
        Assert.Throws<RefusalException>(() => Obstacle.Of("sea", Angle.Zero, Metres(1), Metres(1), Metres(10_001)));
        Assert.Throws<RefusalException>(() => Obstacle.Of("sea", Angle.FromDegrees(-1), Metres(1), Metres(1), Metres(1)));
    }

    // At the edge of what it hides nothing is hidden.
    [Fact]
    public void A_thing_without_height_hides_nothing_over_the_horizon()
        => Assert.False(Obstacle.Of("kerb", Angle.Zero, Metres(1), Metres(1), default).Hides(new SkyPosition(Angle.Zero, Angle.Zero, Angle.Zero)));

    [Theory]
    [InlineData(361, 15)]
    [InlineData(10, 0)]
    public void Obstacles_nowhere_are_refused(double bearing, double distance)
        => Assert.Throws<RefusalException>(() => Obstacle.Of("wall", Angle.FromDegrees(bearing), Metres(distance), Metres(1), Metres(1)));

    private static Length Metres(double metres) => Length.FromMetres(metres);
}
