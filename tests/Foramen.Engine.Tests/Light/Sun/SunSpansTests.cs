using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class SunSpansTests
{
    // Rise and set by another road: the same bounds as the day's events.
    [Fact]
    public void Spans_of_an_upright_sun_end_at_rise_and_set() => Gen.Select(GenInstant, GenPlace).Sample(
        (instant, place) =>
        {
            var until = instant.AddDays(2);
            var spans = SunSpans.Find(instant, until, place, sun => sun.TrueElevation.Degrees - SkyDay.HorizonDegrees, Angle.FromDegrees(-5));
            var bounds = spans.SelectMany(span => new[] { span.Start, span.End }).Where(bound => bound > instant && bound < until).ToList();
            var events = SkyDay.Of(instant, TimeSpan.FromDays(2), place).Events
                .Where(one => one.Kind is SkyEventKind.Sunrise or SkyEventKind.Sunset).Select(one => one.Instant).ToList();
            Assert.Equal(events.Count, bounds.Count);
            Assert.All(events.Zip(bounds), pair => Assert.Equal(0, (pair.First - pair.Second).TotalSeconds, 0.5));
        },
        iter: Samples.Of(60));

    // A slit between two walls that the sun passes in three minutes: shorter than the coarse step, still found, and so is the pole that hides it as long.
    [Fact]
    public void Short_spans_and_short_gaps_are_found()
    {
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.Zero);
        double Aside(SkyPosition sun) => Math.Abs(sun.Azimuth.Degrees - 180);
        var slit = SunSpans.Find(from, from.AddDays(30), Basin, sun => 0.6 - Aside(sun), Angle.FromDegrees(-5));
        Assert.Equal(30, slit.Count);
        Assert.All(slit, span => Assert.InRange(span.Length.TotalMinutes, 1, 6));
        var pole = SunSpans.Find(from, from.AddDays(30), Basin, sun => Math.Min(sun.Elevation.Degrees, Aside(sun) - 0.6), Angle.FromDegrees(-5));
        Assert.Equal(60, pole.Count);
    }

    [Fact]
    public void A_search_that_ends_before_it_begins_is_refused()
        => Assert.Throws<RefusalException>(() => SunSpans.Find(DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch.AddDays(-1), Basin, _ => 1, Angle.Zero));
}
