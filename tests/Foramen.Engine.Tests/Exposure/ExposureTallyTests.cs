using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Exposure;

public class ExposureTallyTests
{
    private static readonly Gen<ExposureTally> GenTally = Gen.Select(Gen.Double[0.5, 1], Gen.Double[2, 2000], (p, seconds) =>
        ExposureTally.For(SchwarzschildFailure.FromExponent(p), Duration.FromSeconds(seconds)));

    private static readonly Gen<LightSpan> GenSpan = Gen.Select(Gen.Double[0, 300], Gen.Double[-5, 2], Gen.Bool, (seconds, stops, covered) =>
        new LightSpan(Duration.FromSeconds(seconds), Stops.FromValue(stops), covered));

    [Fact]
    public void Order_of_the_spans_does_not_matter() => Gen.Select(GenTally, GenSpan.List[0, 8]).Sample((tally, spans) =>
        Assert.Equal(tally.Progress(spans), tally.Progress(Enumerable.Reverse(spans)), 1e-9));

    [Fact]
    public void Cutting_a_span_in_two_changes_nothing() => Gen.Select(GenTally, GenSpan, Gen.Double[0, 1]).Sample((tally, span, at) =>
    {
        var first = span with { Time = Duration.FromSeconds(span.Time.Seconds * at) };
        var second = span with { Time = Duration.FromSeconds(span.Time.Seconds * (1 - at)) };
        Assert.Equal(tally.Progress([span]), tally.Progress([first, second]), 1e-9);
    });

    [Fact]
    public void Waiting_out_the_time_left_finishes_the_sheet() => Gen.Select(GenTally, GenSpan.List[0, 5], Gen.Double[-5, 2]).Sample((tally, spans, light) =>
    {
        var now = Stops.FromValue(light);
        var progress = tally.Progress(spans);
        var after = tally.Progress([.. spans, new LightSpan(tally.Remaining(progress, now), now)]);
        Assert.Equal(Math.Max(1, progress), after, 1e-9);
    });

    [Fact]
    public void Less_light_never_takes_less_time() => Gen.Select(GenTally, Gen.Double[-5, 2], Gen.Double[0, 3]).Sample((tally, light, less) =>
        tally.FullTimeAt(Stops.FromValue(light - less)) >= tally.FullTimeAt(Stops.FromValue(light)));

    [Fact]
    public void Done_is_neither_over_nor_under() => GenTally.Sample(tally => Assert.Equal(0, tally.OverOrUnder(1).Value, 1e-9));

    // Without failure progress is light times time: 30 s of 120 at the metered light, 40 s at half of it, and nothing while the hole is covered.
    [Fact]
    public void Progress_is_the_part_of_the_light_needed()
    {
        var tally = ExposureTally.For(SchwarzschildFailure.FromExponent(1), Duration.FromSeconds(120));
        Assert.Equal(0.25, tally.Progress([new LightSpan(Duration.FromSeconds(30), Stops.Zero)]), 1e-12);
        Assert.Equal(1 / 6.0, tally.Progress([new LightSpan(Duration.FromSeconds(40), Stops.FromValue(-1))]), 1e-12);
        Assert.Equal(0, tally.Progress([new LightSpan(Duration.FromSeconds(60), Stops.Zero, true)]));
        Assert.Equal(45, tally.Remaining(0.25, Stops.FromValue(1)).Seconds, 1e-9);
        Assert.Equal(1, tally.OverOrUnder(2).Value, 1e-12);
    }

    [Fact]
    public void Absurd_plans_are_refused()
    {
        Assert.Throws<RefusalException>(() => ExposureTally.For(SchwarzschildFailure.Assumed, Duration.FromSeconds(0)));
        var tally = ExposureTally.For(SchwarzschildFailure.Assumed, Duration.FromSeconds(60));
        Assert.Throws<RefusalException>(() => tally.FullTimeAt(Stops.FromValue(21)));
        Assert.Throws<RefusalException>(() => tally.FullTimeAt(Stops.FromValue(-21)));
        Assert.Throws<RefusalException>(() => tally.Remaining(-0.1, Stops.Zero));
        Assert.Throws<RefusalException>(() => tally.OverOrUnder(0));
    }
}
