using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// Worked examples of J. Meeus, Astronomical Algorithms, 2nd ed. (1998). They are stated in dynamical time, which in 1992 was 59 s ahead of UT.
/// </summary>
public class MeeusTests
{
    // Example 25.b and 28.a: 1992 October 13, 0h.
    [Fact]
    [Source("meeus-1998", "examples 25.b and 28.a")]
    public void The_sun_in_october_1992()
    {
        var instant = Dynamical(1992, 10, 13);
        Assert.Equal(-7.783817, Sun.Declination(instant).Degrees, 0.0002);
        Assert.Equal(0.99760775, Sun.DistanceAstronomicalUnits(instant), 1e-7);
        Assert.Equal((13 * 60) + 42.6, Sun.EquationOfTimeMinutes(instant) * 60, 0.2);
    }

    // Example 47.a: 1992 April 12, 0h. Distance to the tenth of a kilometre printed, plus the Moon's motion in a second of time.
    [Fact]
    [Source("meeus-1998", "example 47.a")]
    public void The_moons_distance_in_april_1992()
        => Assert.Equal(368409.7, Moon.Distance(Dynamical(1992, 4, 12)).Metres / 1000, 0.2);

    // Example 48.a: the same instant.
    [Fact]
    [Source("meeus-1998", "example 48.a")]
    public void The_moons_phase_in_april_1992()
    {
        var phase = Moon.PhaseAt(Dynamical(1992, 4, 12));
        Assert.Equal(69.0756, phase.PhaseAngle.Degrees, 0.002);
        Assert.Equal(0.6786, phase.LitFraction, 0.00006);
        Assert.True(phase.Waxing);
    }

    private static DateTimeOffset Dynamical(int year, int month, int day) => new DateTimeOffset(year, month, day, 0, 0, 0, TimeSpan.Zero).AddSeconds(-59);
}
