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

    // Example 25.b: the Earth seen from the Sun, 19.907372° and −0.644″ as printed.
    [Fact]
    [Source("meeus-1998", "example 25.b", Basis.Memory)]
    public void The_earth_on_its_way_in_october_1992()
    {
        var (longitude, latitude, distance) = EarthOrbit.At(CenturiesOf(2448908.5));
        Assert.Equal(19.907372, Turn(longitude), 2e-6);
        Assert.Equal(-0.644, latitude * Degree * 3600, 0.001);
        Assert.Equal(0.99760775, distance, 6e-9);
    }

    // Example 47.a to the last digit printed.
    [Fact]
    [Source("meeus-1998", "example 47.a", Basis.Memory)]
    public void The_moon_on_its_way_in_april_1992()
    {
        var (longitude, latitude, distance) = MoonOrbit.At(CenturiesOf(2448724.5));
        Assert.Equal(133.162655, Turn(longitude), 1e-6);
        Assert.Equal(-3.229126, latitude * Degree, 1e-6);
        Assert.Equal(368409.7, distance, 0.05);
    }

    // The same example, apparent right ascension and declination. Nutation is good to 0.5″ here, 0.00014°.
    [Fact]
    [Source("meeus-1998", "example 47.a", Basis.Memory)]
    public void The_moon_among_the_stars_in_april_1992()
    {
        var centuries = CenturiesOf(2448724.5);
        var moon = Moon.Vector(centuries, EarthAxis.At(centuries));
        Assert.Equal(134.688470, moon.RightAscension * Degree, 0.0002);
        Assert.Equal(13.768368, moon.Declination * Degree, 0.0002);
        Assert.Equal(368409.7, moon.Distance, 0.05);
    }

    // Example 22.a, 1987 April 10, 0h: Δψ −3.788″, ε 23°26′36.850″. The four largest terms that are used here are good to 0.5″ and 0.1″, as the chapter says.
    [Fact]
    [Source("meeus-1998", "example 22.a", Basis.Memory)]
    public void The_axis_in_april_1987()
    {
        var axis = EarthAxis.At(CenturiesOf(2446895.5));
        Assert.Equal(-3.788, axis.NutationInLongitude * Degree * 3600, 0.5);
        Assert.Equal((23 * 3600) + (26 * 60) + 36.850, axis.Obliquity * Degree * 3600, 0.1);
        Assert.Equal(-0.2317 * 15, axis.EquationOfEquinoxes * Degree * 3600, 0.5);
    }

    // Examples 12.a and 12.b: 1987 April 10, 0h and 19h21m UT, 13h10m46.3668s and 8h34m57.0896s.
    [Theory]
    [InlineData(2446895.5, 13, 10, 46.3668)]
    [InlineData(2446896.30625, 8, 34, 57.0896)]
    [Source("meeus-1998", "examples 12.a and 12.b", Basis.Memory)]
    public void Sidereal_time_at_greenwich(double julianDay, int hours, int minutes, double seconds)
        => Assert.Equal((hours * 15) + (minutes / 4.0) + (seconds / 240), Turn(EarthAxis.MeanSiderealTime(julianDay - 2451545)), 1e-6);

    // Example 13.b: Venus low in the west, apparent sidereal time of Greenwich 8h34m56.853s, 5h08m15.7s west (also given as 77°03′56″, 0.0001° more). Azimuth is counted from south there: 68.0337°.
    [Fact]
    [Source("meeus-1998", "example 13.b", Basis.Memory)]
    public void Venus_low_in_the_west()
    {
        var place = GeographicPosition.FromDegrees(38 + (55 / 60.0) + (17 / 3600.0), -15 * (5 + (8 / 60.0) + (15.7 / 3600)));
        var seen = new Observer(place).Sight(Far(347.3193375, -6.719892), Hours(8, 34, 56.853));
        Assert.Equal(180 + 68.0337, seen.AzimuthDegrees, 1e-4);
        Assert.Equal(15.1249, seen.TrueElevationDegrees, 1e-4);
    }

    // Example 40.a: Mars from a mountain, at 0.37276 astronomical units stands where a star would at 22h38m08.54s, −15°46′30.0″.
    [Fact]
    [Source("meeus-1998", "example 40.a", Basis.Memory)]
    public void Mars_near_the_earth_is_shifted_by_parallax()
    {
        var mountain = new Observer(GeographicPosition.FromDegrees(33.356111, -15 * (7 + (47 / 60.0) + (27 / 3600.0)), 1706));
        var sidereal = Hours(1, 40, 45);
        var far = Far(339.530208, -15.771083);
        var scale = 0.37276 * Sun.AstronomicalUnitKilometres / far.Distance;
        var mars = mountain.Sight(new EquatorialVector(far.X * scale, far.Y * scale, far.Z * scale), sidereal);
        var star = mountain.Sight(Far((22 * 15) + (38 / 4.0) + (8.54 / 240), -(15 + (46 / 60.0) + (30.0 / 3600))), sidereal);
        Assert.Equal(0, 3600 * (mars.TrueElevationDegrees - star.TrueElevationDegrees), 0.2);
        Assert.Equal(0, 3600 * (mars.AzimuthDegrees - star.AzimuthDegrees) * Math.Cos(star.TrueElevationDegrees / Degree), 0.2);
    }

    // Example 16.a, formula 16.4: a true height of 33.246′ is lifted by 24.618′ in air of 1010 hPa and 10 °C; in other air by P/1010 · 283/(273 + T) of that.
    [Fact]
    [Source("meeus-1998", "example 16.a", Basis.Memory)]
    public void Air_lifts_the_suns_edge()
    {
        Assert.Equal(24.618, 60 * new Atmosphere().RefractionDegrees(33.246 / 60), 0.001);
        Assert.Equal(
            24.618 * 820 / 1010 * 283 / (273 - 20),
            60 * new Atmosphere { PressureHectopascals = 820, TemperatureCelsius = -20 }.RefractionDegrees(33.246 / 60),
            0.001);
    }

    private const double Degree = 180 / Math.PI;

    private static double CenturiesOf(double julianDay) => (julianDay - 2451545) / 36525;

    private static double Turn(double radians) => ((radians * Degree % 360) + 360) % 360;

    private static double Hours(int hours, int minutes, double seconds) => ((hours * 15) + (minutes / 4.0) + (seconds / 240)) / Degree;

    // So far away that it has no parallax.
    private static EquatorialVector Far(double rightAscension, double declination)
    {
        const double Distance = 1e15;
        var (ascension, height) = (rightAscension / Degree, declination / Degree);
        return new(Distance * Math.Cos(height) * Math.Cos(ascension), Distance * Math.Cos(height) * Math.Sin(ascension), Distance * Math.Sin(height));
    }

    private static DateTimeOffset Dynamical(int year, int month, int day) => new DateTimeOffset(year, month, day, 0, 0, 0, TimeSpan.Zero).AddSeconds(-59);
}
