using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// Terrestrial less universal time as F. Espenak and J. Meeus, Five Millennium Canon of Solar Eclipses, NASA/TP-2006-214141, print it from observation
/// (table 2 of their page on it) and foretell it for 2050. Their polynomials follow the table to 0.2 s.
/// </summary>
[Source("espenak-meeus-2006", "values from observation", Basis.Memory)]
public class DeltaTimeTests
{
    [Theory]
    [InlineData(1955, 31.1)]
    [InlineData(1960, 33.2)]
    [InlineData(1965, 35.7)]
    [InlineData(1970, 40.2)]
    [InlineData(1975, 45.5)]
    [InlineData(1980, 50.5)]
    [InlineData(1985, 54.3)]
    [InlineData(1990, 56.9)]
    [InlineData(1995, 60.8)]
    [InlineData(2000, 63.8)]
    [InlineData(2005, 64.7)]
    public void Seconds_as_observed(double year, double seconds) => Assert.Equal(seconds, AstronomicalTime.DeltaSeconds(year), 0.2);

    [Fact]
    public void Seconds_foretold_for_2050() => Assert.Equal(93, AstronomicalTime.DeltaSeconds(2050), 0.5);

    // One clock, so the pieces must join.
    [Theory]
    [InlineData(1961)]
    [InlineData(1986)]
    [InlineData(2005)]
    [OwnRule]
    public void The_pieces_join(double year)
        => Assert.Equal(AstronomicalTime.DeltaSeconds(year - 1e-9), AstronomicalTime.DeltaSeconds(year), 0.15);

    // Julian day 2451545.0 is 2000 January 1.5.
    [Fact]
    [OwnRule]
    public void Days_are_counted_from_noon_of_the_first_day_of_2000()
    {
        var time = AstronomicalTime.From(new DateTimeOffset(2000, 1, 2, 13, 0, 0, TimeSpan.FromHours(1)));
        Assert.Equal(1, time.DaysUniversal, 1e-12);
        Assert.Equal(1 + (63.86 / 86400), time.DaysTerrestrial, 1e-7);
        Assert.Equal(time.DaysTerrestrial / 36525, time.Centuries, 1e-15);
    }
}
