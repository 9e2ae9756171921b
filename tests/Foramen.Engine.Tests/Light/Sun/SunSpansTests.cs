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

    // Mornings until the sun has come round to a line, looked at from outside: at both bounds the height is zero.
    [Fact]
    public void Bounds_are_where_the_height_is_zero() => Gen.Select(GenInstant, Gen.Double[140, 220], Gen.Int[1, 60]).Sample(
        (instant, line, minutes) =>
        {
            double Height(SkyPosition sun) => Math.Min(60 * Math.Sin((line - sun.Azimuth.Degrees) * Math.PI / 180), sun.TrueElevation.Degrees + 2);
            var until = instant.AddDays(3);
            var spans = SunSpans.Find(instant, until, Basin, Height, Angle.FromDegrees(-2), TimeSpan.FromMinutes(minutes));
            Assert.NotEmpty(spans);
            foreach (var span in spans)
            {
                Assert.True(span.Start < span.End);
                Assert.True(Height(Sun.At(span.Start + (span.Length / 2), Basin)) > 0);
                foreach (var bound in new[] { span.Start, span.End }.Where(bound => bound > instant && bound < until))
                {
                    Assert.Equal(0, Height(Sun.At(bound, Basin)), 0.002);
                }
            }

            Assert.All(spans.Zip(spans.Skip(1)), pair => Assert.True(pair.First.End < pair.Second.Start));
        },
        iter: Samples.Of(40));

    [Fact]
    public void What_is_always_so_is_one_span_and_what_never_is_none()
    {
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.FromHours(2));
        var whole = Assert.Single(SunSpans.Find(from, from.AddDays(2), Basin, _ => 1, Angle.FromDegrees(-90)));
        Assert.Equal((from, from.AddDays(2)), (whole.Start, whole.End));
        Assert.Equal(from.Offset, whole.Start.Offset);
        Assert.Equal(TimeSpan.FromDays(2), whole.Length);
        Assert.Empty(SunSpans.Find(from, from.AddDays(2), Basin, _ => -1, Angle.FromDegrees(-90)));
        Assert.Empty(SunSpans.Find(from, from, Basin, _ => 1, Angle.FromDegrees(-90)));
    }

    // The second day of the search is open when it ends.
    [Fact]
    public void A_span_that_is_open_at_the_end_is_cut_there()
    {
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.Zero);
        var spans = SunSpans.Find(from, from.AddHours(36), Basin, sun => sun.Elevation.Degrees, Angle.FromDegrees(-5));
        Assert.Equal(2, spans.Count);
        Assert.Equal(from.AddHours(36), spans[1].End);
    }

    // Nights are leapt over, days are looked at every quarter of an hour: less than a hundred looks for a day and its two bounds.
    [Fact]
    public void Nights_are_leapt_over()
    {
        var looks = 0;
        var from = new DateTimeOffset(2024, 12, 1, 0, 0, 0, TimeSpan.Zero);
        double Height(SkyPosition sun)
        {
            looks++;
            Assert.True(sun.TrueElevation.Degrees > -1.5);
            return sun.Elevation.Degrees;
        }

        Assert.Equal(20, SunSpans.Find(from, from.AddDays(20), Basin, Height, Angle.FromDegrees(-1)).Count);

        // Eight hours of day at four looks an hour, and as many for the two bounds.
        Assert.InRange(looks, 20 * 20, 20 * 64);
    }

    // A quarter of an hour halved to a tenth of a second takes 14 looks; false position may waste two of three on a height that leaps, so 45 for a bound and no more.
    [Theory]
    [InlineData(1, 1e-9)]
    [InlineData(1e-9, 1)]
    [InlineData(1, 1)]
    public void A_height_that_leaps_is_closed_in_on_all_the_same(double before, double after)
    {
        var looks = 0;
        double Height(SkyPosition sun)
        {
            looks++;
            return sun.Azimuth.Degrees < 180 ? before : -after;
        }

        var from = new DateTimeOffset(2024, 6, 1, 8, 0, 0, TimeSpan.Zero);
        var span = Assert.Single(SunSpans.Find(from, from.AddHours(8), Basin, Height, Angle.FromDegrees(-90)));
        Assert.Equal(180, Sun.At(span.End, Basin).Azimuth.Degrees, 0.002);

        // Thirty-three looks for the eight hours.
        Assert.InRange(looks, 33 + 10, 33 + 45);
    }

    [Fact]
    public void A_height_that_is_no_number_ends_the_search()
    {
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.True(SunSpans.Find(from, from.AddDays(3), Basin, _ => double.NaN, Angle.FromDegrees(-90)).Count <= 1);
        Assert.Throws<RefusalException>(() => SunSpans.Find(from, from.AddDays(3), Basin, sun => sun.Elevation.Degrees > 10 ? double.NaN : -1, Angle.FromDegrees(-90)));
    }

    [Theory]
    [InlineData(401, 15)]
    [InlineData(1, 0.9)]
    [InlineData(1, 61)]
    public void Too_long_and_too_coarse_is_refused(double days, double minutes)
    {
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.Throws<RefusalException>(() => SunSpans.Find(from, from.AddDays(days), Basin, _ => 1, Angle.Zero, TimeSpan.FromMinutes(minutes)));
    }

    [Fact]
    public void A_search_that_ends_before_it_begins_is_refused()
        => Assert.Throws<RefusalException>(() => SunSpans.Find(DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch.AddDays(-1), Basin, _ => 1, Angle.Zero));
}
