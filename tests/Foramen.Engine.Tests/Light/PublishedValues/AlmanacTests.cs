using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>Instants that almanacs print to the minute (US Naval Observatory, NASA eclipse and Moon pages; from memory).</summary>
[Source("usno-almanac", Basis.Memory)]
public class AlmanacTests
{
    // At an equinox the declination is nought; it changes by 0.016° in an hour, so a minute is 0.0003°.
    [Theory]
    [InlineData("2000-03-20T07:35Z")]
    [InlineData("2000-09-22T17:28Z")]
    [InlineData("2024-03-20T03:06Z")]
    [InlineData("2024-09-22T12:44Z")]
    public void Equinoxes(string instant) => Assert.Equal(0, Sun.Declination(Parse(instant)).Degrees, 0.0004);

    // Around a solstice the declination is symmetric in time; 12 h away an error of a minute shows as 0.0000075°·24.
    [Theory]
    [InlineData("2000-06-21T01:48Z")]
    [InlineData("2000-12-21T13:37Z")]
    [InlineData("2024-06-20T20:51Z")]
    public void Solstices(string instant)
    {
        var at = Parse(instant);
        Assert.Equal(23.44, Math.Abs(Sun.Declination(at).Degrees), 0.005);
        Assert.Equal(Sun.Declination(at.AddDays(-2)).Degrees, Sun.Declination(at.AddDays(2)).Degrees, 0.002);
    }

    // The Moon gains 0.0085° on the Sun in a minute, up to 0.01°.
    [Theory]
    [InlineData("2000-01-21T04:41Z", 180)]
    [InlineData("2024-04-08T18:21Z", 0)]
    [InlineData("2024-04-15T19:13Z", 90)]
    [InlineData("2024-04-23T23:49Z", 180)]
    [InlineData("2024-05-01T11:27Z", 270)]
    public void Phases_of_the_moon(string instant, double elongation)
        => Assert.Equal(0, Math.IEEERemainder(Moon.PhaseAt(Parse(instant)).Elongation.Degrees - elongation, 360), 0.012);

    // The nearest full moon for decades: 356 509 km.
    [Fact]
    public void The_moon_at_its_nearest()
        => Assert.Equal(356509, Moon.Distance(Parse("2016-11-14T11:23Z")).Metres / 1000, 10.0);

    // Greatest eclipse of 21 August 2017: 18:25:32 UT at 36°58.0′ N, 87°40.3′ W, Sun 63.9° high at azimuth 197.9°; both discs are in line.
    [Fact]
    public void Sun_and_moon_meet_in_an_eclipse()
    {
        var instant = Parse("2017-08-21T18:25:32Z");
        var place = GeographicPosition.FromDegrees(36 + (58.0 / 60), -87 - (40.3 / 60));
        var (sun, moon) = (Sun.At(instant, place), Moon.At(instant, place));
        Assert.Equal(63.9, sun.TrueElevation.Degrees, 0.06);
        Assert.Equal(197.9, sun.Azimuth.Degrees, 0.1);
        Assert.Equal(sun.TrueElevation.Degrees, moon.TrueElevation.Degrees, 0.01);
        Assert.Equal(sun.Azimuth.Degrees, moon.Azimuth.Degrees, 0.02);
    }

    // Greenwich, rise and set of the longest and the shortest day, UT.
    [Theory]
    [InlineData("2024-06-20T00:00Z", "03:43", "20:21")]
    [InlineData("2024-12-21T00:00Z", "08:04", "15:53")]
    public void Rise_and_set_at_greenwich(string midnight, string rise, string set)
    {
        var day = SkyDay.Of(Parse(midnight), TimeSpan.FromDays(1), GeographicPosition.FromDegrees(51.4779, 0));
        Assert.Equal(TimeSpan.Parse(rise, null).TotalMinutes, day.First(SkyEventKind.Sunrise)!.Value.TimeOfDay.TotalMinutes, 1.0);
        Assert.Equal(TimeSpan.Parse(set, null).TotalMinutes, day.First(SkyEventKind.Sunset)!.Value.TimeOfDay.TotalMinutes, 1.0);
    }

    private static DateTimeOffset Parse(string text) => DateTimeOffset.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
