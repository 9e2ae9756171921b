using CsCheck;
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

    // The same wall, sighted: edges at 350° ± 33.69°, its top at 45° in the middle.
    [Fact]
    public void What_is_sighted_hides_what_the_measured_thing_hides()
    {
        var sighted = Obstacle.Between("wall", Angle.FromDegrees(316.31), Angle.FromDegrees(23.69), Angle.FromDegrees(45));
        Assert.Equal(350, sighted.Bearing.Degrees, 6);
        Gen.Select(Gen.Double[0, 360], Gen.Double[0, 90])
            .Where((azimuth, elevation) => Math.Abs(Wall.ClearanceDegrees(Sky(azimuth, elevation))) > 0.01)
            .Sample((azimuth, elevation) => Assert.Equal(Wall.Hides(Sky(azimuth, elevation)), sighted.Hides(Sky(azimuth, elevation))), iter: Samples.Of(1000));
    }

    // As a double the right edge is 61.88295372515665, which lies 170.00000000000003 further.
    [Fact]
    public void Edges_that_are_as_far_apart_as_may_be_but_for_rounding_are_taken()
    {
        var left = 251.88295372515663;
        var thing = Obstacle.Between("hill", Angle.FromDegrees(left), Angle.FromDegrees((left + 170) % 360), Angle.FromDegrees(59));
        Assert.Equal(336.88295372515663, thing.Bearing.Degrees, 9);
    }

    [Fact]
    public void It_hides_what_is_between_its_edges_and_under_its_top_and_nothing_else()
        => Gen.Select(Gen.Double[0, 360], Gen.Double[0.1, 170], Gen.Double[0.1, 85]).Sample(
            (left, span, top) =>
            {
                var right = (left + span) % 360;
                var thing = Obstacle.Between("hill", Angle.FromDegrees(left), Angle.FromDegrees(right), Angle.FromDegrees(top));
                var middle = (left + (span / 2)) % 360;
                Assert.True(thing.Hides(Sky(middle, top - 0.05)));
                Assert.False(thing.Hides(Sky(middle, top + 0.05)));
                // Level with the horizon it reaches from edge to edge.
                Assert.True(thing.Hides(Sky((left + 0.01) % 360, 1e-6)));
                Assert.True(thing.Hides(Sky((right + 359.99) % 360, 1e-6)));
                Assert.False(thing.Hides(Sky((left + 359.99) % 360, 1e-6)));
                Assert.False(thing.Hides(Sky((right + 0.01) % 360, 1e-6)));
            },
            iter: Samples.Of(500));

    [Theory]
    [InlineData(-1, 20, 10, "bearing of the left edge")]
    [InlineData(361, 20, 10, "bearing of the left edge")]
    [InlineData(0, 361, 10, "bearing of the right edge")]
    [InlineData(0, 20, 0, "height of the top")]
    [InlineData(0, 20, 86, "height of the top")]
    [InlineData(20, 0, 10, "changed places")]
    [InlineData(20, 20, 10, "changed places")]
    [InlineData(0, 171, 10, "changed places")]
    public void What_cannot_be_sighted_is_refused(double left, double right, double top, string said)
        => Assert.Contains(
            said,
            Assert.Throws<RefusalException>(() => Obstacle.Between("hill", Angle.FromDegrees(left), Angle.FromDegrees(right), Angle.FromDegrees(top))).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(0, 0.1, 0.1)]
    [InlineData(360, 170, 85)]
    [InlineData(350, 160, 45)]
    public void Sights_at_the_edges_are_taken(double left, double right, double top)
        => Assert.Equal("obstacle", Obstacle.Between(" ", Angle.FromDegrees(left), Angle.FromDegrees(right), Angle.FromDegrees(top)).Name);

    private static SkyPosition Sky(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation), Angle.FromDegrees(elevation));

    private static Length Metres(double metres) => Length.FromMetres(metres);
}
