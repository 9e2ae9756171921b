using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class SkyDayTests
{
    private static readonly SkyEventKind[] Rising =
        [SkyEventKind.AstronomicalDawn, SkyEventKind.NauticalDawn, SkyEventKind.CivilDawn, SkyEventKind.Sunrise];

    private static readonly SkyEventKind[] Setting =
        [SkyEventKind.Sunset, SkyEventKind.CivilDusk, SkyEventKind.NauticalDusk, SkyEventKind.AstronomicalDusk];

    // The definition itself, looked at from outside: at each event the Sun stands at that event's elevation.
    [Fact]
    public void The_sun_stands_at_the_elevation_that_names_the_event() => Gen.Select(GenInstant, GenPlace).Sample(
        (instant, place) =>
        {
            foreach (var one in SkyDay.Of(instant, TimeSpan.FromDays(1), place).Events)
            {
                double? elevation = one.Kind switch
                {
                    SkyEventKind.Sunrise or SkyEventKind.Sunset => -50.0 / 60,
                    SkyEventKind.CivilDawn or SkyEventKind.CivilDusk => -6,
                    SkyEventKind.NauticalDawn or SkyEventKind.NauticalDusk => -12,
                    SkyEventKind.AstronomicalDawn or SkyEventKind.AstronomicalDusk => -18,
                    _ => null,
                };
                if (elevation is { } degrees)
                {
                    Assert.Equal(degrees, Sun.At(one.Instant, place).TrueElevation.Degrees, 0.001);
                }
            }
        },
        iter: Samples.Of(60));

    [Fact]
    public void Rise_and_set_take_turns() => Gen.Select(GenInstant, GenPlace).Sample(
        (instant, place) =>
        {
            var day = SkyDay.Of(instant, TimeSpan.FromDays(3), place);
            foreach (var (rising, setting) in Rising.Zip(Setting.Reverse()).Append((SkyEventKind.Moonrise, SkyEventKind.Moonset)))
            {
                var kinds = day.Events.Where(one => one.Kind == rising || one.Kind == setting).Select(one => one.Kind).ToList();
                Assert.All(kinds.Zip(kinds.Skip(1)), pair => Assert.NotEqual(pair.First, pair.Second));
            }

            Assert.Equal(day.Events.OrderBy(one => one.Instant), day.Events);
        },
        iter: Samples.Of(40));

    [Fact]
    public void Twilights_follow_in_order_at_the_basin()
    {
        var day = SkyDay.Of(new DateTimeOffset(2024, 3, 20, 0, 0, 0, TimeSpan.FromHours(1)), TimeSpan.FromDays(1), Basin);
        var instants = Rising.Append(SkyEventKind.SolarNoon).Concat(Setting).Select(kind => day.First(kind)!.Value).ToList();
        Assert.Equal(instants.Order(), instants);
        Assert.All(instants, instant => Assert.Equal(TimeSpan.FromHours(1), instant.Offset));
        Assert.False(day.SunStaysUp || day.SunStaysDown);
    }

    // Noon is the passage above the pole, not the one below it: half a day away the Sun stands lower, under the midnight sun too.
    [Theory]
    [InlineData(52)]
    [InlineData(-35)]
    [InlineData(78)]
    [InlineData(-78)]
    public void At_noon_the_sun_stands_higher_than_half_a_day_away(double latitude)
    {
        var place = GeographicPosition.FromDegrees(latitude, 15);
        foreach (var month in Enumerable.Range(1, 12))
        {
            var day = SkyDay.Of(new DateTimeOffset(2024, month, 21, 0, 0, 0, TimeSpan.Zero), TimeSpan.FromDays(1), place);
            var noon = Assert.Single(day.Events, one => one.Kind == SkyEventKind.SolarNoon).Instant;
            var height = Sun.At(noon, place).TrueElevation.Degrees;
            Assert.True(height > Sun.At(noon.AddHours(12), place).TrueElevation.Degrees);
            Assert.True(height > Sun.At(noon.AddHours(-12), place).TrueElevation.Degrees);
        }
    }

    // North of 66.5° the Sun stays up at midsummer and down at midwinter; geography books.
    [Theory]
    [InlineData("2024-06-20", 78, true, false)]
    [InlineData("2024-12-21", 78, false, true)]
    [InlineData("2024-06-20", -78, false, true)]
    [InlineData("2024-06-20", 90, true, false)]
    [InlineData("2024-12-21", 90, false, true)]
    [InlineData("2024-06-20", 52, false, false)]
    public void Midnight_sun_and_polar_night(string date, double latitude, bool up, bool down)
    {
        var midnight = DateTimeOffset.Parse(date + "T00:00Z", System.Globalization.CultureInfo.InvariantCulture);
        var day = SkyDay.Of(midnight, TimeSpan.FromDays(1), GeographicPosition.FromDegrees(latitude, 15));
        Assert.Equal((up, down), (day.SunStaysUp, day.SunStaysDown));
        if (up || down)
        {
            Assert.Null(day.First(SkyEventKind.Sunrise));
        }
    }

    // North of about 48.6° it does not get fully dark at midsummer (90° − 23.44° − 18° = 48.56°).
    [Theory]
    [InlineData(48, true)]
    [InlineData(49, false)]
    public void Full_darkness_at_midsummer(double latitude, bool dark)
    {
        var noon = new DateTimeOffset(2024, 6, 20, 12, 0, 0, TimeSpan.Zero);
        Assert.Equal(dark, SkyDay.Of(noon, TimeSpan.FromDays(1), GeographicPosition.FromDegrees(latitude, 0)).First(SkyEventKind.AstronomicalDusk) is not null);
    }

    // A sun that only just shows its edge, found between two samples: the shortest day there is near the polar circle.
    [Fact]
    public void A_sun_that_shows_for_minutes_is_not_missed()
    {
        var midnight = new DateTimeOffset(2024, 12, 21, 0, 0, 0, TimeSpan.Zero);
        var grazing = Enumerable.Range(0, 120).Select(i => 67.25 + (i * 0.002))
            .Select(latitude => SkyDay.Of(midnight, TimeSpan.FromDays(1), GeographicPosition.FromDegrees(latitude, 15)))
            .Where(day => !day.SunStaysDown)
            .Select(day => day.First(SkyEventKind.Sunset)!.Value - day.First(SkyEventKind.Sunrise)!.Value)
            .ToList();
        Assert.All(grazing.Zip(grazing.Skip(1)), pair => Assert.True(pair.Second < pair.First));
        Assert.True(grazing[^1] < TimeSpan.FromMinutes(20));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(500)]
    public void Spans_that_are_no_day_are_refused(double hours)
        => Assert.Throws<RefusalException>(() => SkyDay.Of(new DateTimeOffset(2024, 3, 20, 0, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(hours), Basin));
}
