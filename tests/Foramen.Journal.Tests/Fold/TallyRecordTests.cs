using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Fold;

public class TallyRecordTests
{
    private static readonly Ulid Sheet = Id(901);

    [Fact]
    public void Nothing_is_tallied_before_the_hole_is_opened()
    {
        var record = At(100, (0, Light(-1)));
        Assert.False(record.WasOpened);
        Assert.Empty(record.Segments);
    }

    [Fact]
    public void An_open_hole_counts_up_to_now()
    {
        var record = At(42, (0, Open()));
        Assert.Equal([(0, 42, 0, false)], Plain(record));
        Assert.True(record.IsOpen);
        Assert.Equal(42, record.ElapsedSeconds);
    }

    [Fact]
    public void A_closed_hole_counts_no_further()
        => Assert.Equal([(0, 30, 0, false)], Plain(At(500, (0, Open()), (30, Close()))));

    [Fact]
    public void Light_splits_the_time_and_covering_is_dark()
    {
        var record = At(100, (0, Open()), (40, Light(-2)), (60, Light(-2, LightWord.Covered)), (70, Light(-1, LightWord.ThinCloud)));
        Assert.Equal([(0, 40, 0, false), (40, 20, -2, false), (60, 10, -2, true), (70, 30, -1, false)], Plain(record));
        Assert.Equal(-1, record.LightStops);
        Assert.False(record.IsCovered);
    }

    [Fact]
    public void The_hole_may_be_opened_again_and_the_time_between_is_dark()
        => Assert.Equal(
            [(0, 30, 0, false), (30, 20, 0, true), (50, 10, -1, false)],
            Plain(At(60, (0, Open()), (30, Close()), (50, new HoleOpened { Sheet = Sheet, LightStops = -1 }))));

    [Fact]
    public void What_is_told_afterwards_is_put_where_it_happened()
    {
        // Back after a locked phone, at 100 s: a cloud came 60 s ago and went 20 s ago.
        var record = At(110, (0, Open()), (100, Light(-2) with { SecondsAgo = 60 }), (101, Light(0, LightWord.Sun) with { SecondsAgo = 21 }));
        Assert.Equal([(0, 40, 0, false), (40, 40, -2, false), (80, 30, 0, false)], Plain(record));
    }

    [Fact]
    public void What_is_told_afterwards_never_reaches_back_before_the_opening()
        => Assert.Equal([(0, 50, -2, false)], Plain(At(50, (0, Open()), (10, Light(-2) with { SecondsAgo = 600 }))));

    [Fact]
    public void After_the_closing_the_light_before_it_can_still_be_told()
        => Assert.Equal(
            [(0, 20, 0, false), (20, 30, -2, false)],
            Plain(At(400, (0, Open()), (50, Close()), (60, Light(-2) with { SecondsAgo = 40 }))));

    [Fact]
    public void A_closing_told_afterwards_ends_the_exposure_when_it_happened()
        => Assert.Equal([(0, 70, 0, false)], Plain(At(400, (0, Open()), (100, Close() with { SecondsAgo = 30 }))));

    [Fact]
    [Trait("Promise", "J8")]
    public void A_clock_set_back_between_two_entries_costs_only_that_stretch_and_is_said()
    {
        // At 40 s by a steady clock the phone's clock goes back an hour; then 20 s pass.
        var record = At(-3600 + 60, (0, Open()), (30, Light(-1)), (-3600 + 40, Light(-2)));
        Assert.True(record.ClockWentBack);
        Assert.Equal([(0, 30, 0, false), (30, 20, -2, false)], Plain(record));
    }

    [Fact]
    [Trait("Promise", "J8")]
    public void A_clock_set_back_since_the_last_entry_counts_as_nothing_and_is_said()
    {
        var record = At(-10, (0, Open()), (30, Light(-1)));
        Assert.True(record.ClockWentBack);
        Assert.Equal([(0, 30, 0, false)], Plain(record));
    }

    [Fact]
    public void A_clock_that_runs_forward_is_not_suspected()
        => Assert.False(At(100, (0, Open()), (30, Light(-1)), (30, Light(-2))).ClockWentBack);

    [Fact]
    public void A_forgotten_open_hole_stays_within_what_the_engine_takes()
        => Assert.Equal(Duration.Max, Assert.Single(At(86_400.0 * 365 * 20, (0, Open())).Spans).Time.Seconds);

    [Fact]
    public void Time_counts_from_the_first_opening_whatever_was_said_before()
    {
        var record = At(40, (0, Light(-1)), (10, Open()));
        Assert.Equal([(0, 30, 0, false)], Plain(record));
        Assert.True(record.WasOpened);
    }

    [Fact]
    public void An_opening_told_afterwards_reaches_back_no_further_than_the_closing_before_it()
        => Assert.Equal(
            [(0, 30, 0, false), (30, 30, 0, false)],
            Plain(At(60, (0, Open()), (30, Close()), (50, Open() with { SecondsAgo = 600 }))));

    [Fact]
    public void A_clock_set_back_twice_is_said_as_well()
        => Assert.True(At(-7100, (0, Open()), (-3600, Light(-1)), (-7200, Light(-2))).ClockWentBack);

    // Schwarzschild's law in closed form: equal effect for equal I·t^p, so a quarter of the light needs 4^(1/p) times the time.
    [Theory]
    [InlineData(1.0)]
    [InlineData(0.9)]
    [InlineData(0.75)]
    public void A_cloud_at_40_s_of_120_leaves_what_the_closed_form_says(double exponent)
    {
        var record = At(40, (0, Open()), (40, Light(-2)));
        var tally = ExposureTally.For(SchwarzschildFailure.FromExponent(exponent), Duration.FromSeconds(120));
        var left = tally.Remaining(tally.Progress(record.Spans), Stops.FromValue(record.LightStops));
        Assert.Equal(80 * Math.Pow(4, 1 / exponent), left.Seconds, 1e-6);
    }

    [Fact]
    public void Segments_have_no_gaps_and_last_as_long_as_the_clock_ran()
        => Gen.Select(Gen.Double[0, 100].Array[1, 8], Gen.Int[0, 2].Array[8], Gen.Double[0, 50]).Sample((steps, what, rest) =>
        {
            var clock = 0.0;
            var said = new List<(double, EntryBody)> { (0, Open()) };
            for (var i = 0; i < steps.Length; i++)
            {
                clock = Math.Round(clock + steps[i], 3);
                said.Add((clock, what[i] == 0 ? Light(-1) : what[i] == 1 ? Light(0, LightWord.Covered) : Open()));
            }

            var record = At(clock + rest, [.. said]);
            var end = 0.0;
            foreach (var segment in record.Segments)
            {
                Assert.Equal(end, segment.StartSeconds, 1e-9);
                Assert.True(segment.Seconds > 0);
                end = segment.StartSeconds + segment.Seconds;
            }

            Assert.Equal(clock + rest, record.ElapsedSeconds, 1e-6);
        });

    private static HoleOpened Open() => new() { Sheet = Sheet };

    private static HoleClosed Close() => new() { Sheet = Sheet };

    private static LightChanged Light(double stops, LightWord word = LightWord.Cloud) => new() { Sheet = Sheet, LightStops = stops, Light = word };

    private static TallyRecord At(double now, params (double Seconds, EntryBody Body)[] said)
        => Ledger.Of(EntrySet.Of(Phoned(said))).Sheets.Find(Sheet)!.TallyAt(Noon.AddSeconds(now));

    private static IEnumerable<(double Start, double Seconds, double Stops, bool Covered)> Plain(TallyRecord record)
        => record.Segments.Select(segment => (segment.StartSeconds, segment.Seconds, segment.LightStops, segment.Covered));
}
