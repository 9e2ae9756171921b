using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Motions;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Fold;

public class SheetMotionsTests
{
    private static readonly Ulid Sheet = Id(901);
    private static readonly Ulid Wheel = Id(911);
    private static readonly FailureLaw NoFailure = SchwarzschildFailure.FromExponent(1);

    private static MotionMarked Marked(double turnSeconds = 20, double? from = null) => new()
    {
        Sheet = Sheet,
        Motion = Wheel,
        Definition = new MotionDefinition { Name = "crank wheel", How = "turns", Left = 0.3, Top = 0.3, Width = 0.2, Height = 0.3, TurnSeconds = turnSeconds, MovesFrom = from },
    };

    [Fact]
    public void A_region_marked_again_is_said_anew_and_can_be_unmarked()
    {
        Assert.Equal(30, Assert.Single(Of((0, Marked(20)), (1, Marked(30))).Motions).Body.Definition.TurnSeconds);
        Assert.Empty(Of((0, Marked()), (1, new MotionRemoved { Sheet = Sheet, Motion = Wheel })).Motions);
    }

    [Fact]
    public void Without_a_touch_it_moves_as_expected()
    {
        var went = Went(200, (0, Marked(from: 0.25)), (10, Open()), (110, Close()));
        Assert.Equal(0.75, went.MovingShare, 1e-9);
        Assert.Equal(100, went.Exposure.Seconds, 1e-9);
        Assert.Equal(1, Assert.Single(SheetMotions.Expected(Of((0, Marked())), Duration.FromSeconds(60))).MovingShare, 1e-9);
    }

    // 40 s of 120 stood, then 60 s turning, then 20 s standing again.
    [Fact]
    public void Touches_say_when_it_moved()
    {
        var went = Went(300, (0, Marked()), (10, Open()), (50, Start()), (110, Stop()), (130, Close()));
        Assert.Equal([(40, false), (60, true), (20, false)], went.Spells.Select(spell => (Math.Round(spell.Time.Seconds, 6), spell.Moves)));
        Assert.Equal(0.5, went.MovingShare, 1e-9);
    }

    [Fact]
    public void Before_a_stop_it_moved_and_what_is_told_afterwards_lies_where_it_happened()
    {
        var went = Went(300, (0, Marked()), (10, Open()), (60, Stop() with { SecondsAgo = 20 }), (110, Close()));
        Assert.Equal([(30, true), (70, false)], went.Spells.Select(spell => (Math.Round(spell.Time.Seconds, 6), spell.Moves)));
    }

    // Opened at 10 s and begun to turn at 60 s, both told 20 s late: 50 s of the hundred.
    [Fact]
    public void An_opening_and_a_start_told_afterwards_lie_where_they_happened()
    {
        var went = Went(300, (0, Marked()), (30, Open() with { SecondsAgo = 20 }), (80, Start() with { SecondsAgo = 20 }), (110, Close()));
        Assert.Equal([(50, false), (50, true)], went.Spells.Select(spell => (Math.Round(spell.Time.Seconds, 6), spell.Moves)));
    }

    [Fact]
    public void A_touch_before_the_hole_opened_holds_from_the_start()
        => Assert.Equal(1, Went(300, (0, Marked()), (5, Start()), (10, Open()), (110, Close())).MovingShare, 1e-9);

    // Two stops less light is worth a quarter; covered it is worth nothing but the wheel turns on.
    [Fact]
    public void Light_weighs_the_spells()
    {
        var went = Went(
            300, (0, Marked()), (0, Open()), (40, new LightChanged { Sheet = Sheet, Light = LightWord.Cloud, LightStops = -2 }), (40.001, Start()),
            (80, new LightChanged { Sheet = Sheet, Light = LightWord.Covered, LightStops = 0 }), (90, Close()));
        Assert.Equal(0.2, went.MovingShare, 0.001);
        Assert.Equal(50, went.Moving.Seconds, 0.01);
    }

    [Fact]
    public void Spells_cover_the_whole_tally_whatever_is_touched() => Gen.Select(Gen.Double[0, 200].Array[0, 6], Gen.Bool).Sample((times, first) =>
    {
        var said = new List<(double, EntryBody)> { (0, Marked()), (10, Open()) };
        said.AddRange(times.Select((time, i) => (time, (EntryBody)((i % 2 == 0) == first ? Start() : Stop()))));
        said.Add((150, Close()));
        var went = Went(400, [.. said.OrderBy(one => one.Item1)]);
        Assert.Equal(140, went.Exposure.Seconds, 1e-6);
        Assert.Equal(1, went.Spells.Sum(spell => spell.Worth), 1e-9);
    });

    [Fact]
    public void Now_it_moves_as_last_touched()
    {
        Assert.True(SheetMotions.MovesAt(Of((0, Marked())), Wheel, Noon));
        Assert.False(SheetMotions.MovesAt(Of((0, Marked(from: 0.5))), Wheel, Noon));
        var touched = Of((0, Marked()), (10, Open()), (50, Start()), (90, Stop()));
        Assert.False(SheetMotions.MovesAt(touched, Wheel, Noon.AddSeconds(20)));
        Assert.True(SheetMotions.MovesAt(touched, Wheel, Noon.AddSeconds(60)));
        Assert.False(SheetMotions.MovesAt(touched, Wheel, Noon.AddSeconds(99)));
    }

    [Theory]
    [InlineData("turns", "The time of a turn is missing; say it.")]
    [InlineData("sways", "How far it sways is missing; say it.")]
    [InlineData("flows", "The time to drift through is missing; say it.")]
    [InlineData("passes", "The width of what passes is missing; say it.")]
    [InlineData("lamp", "The lamp’s light is missing; say it.")]
    [InlineData("hops", "How “thing” moves is “hops”; it should be turns, passes, goesAway, sways, flows or lamp.")]
    public void What_is_missing_is_said(string how, string sentence)
        => Assert.Equal(
            sentence,
            Assert.Throws<RefusalException>(() => new MotionDefinition { Name = "thing", How = how, Left = 0, Top = 0, Width = 1, Height = 1 }.ToRegion()).Message);

    private static HoleOpened Open() => new() { Sheet = Sheet, LightStops = 0 };

    private static HoleClosed Close() => new() { Sheet = Sheet };

    private static MotionStarted Start() => new() { Sheet = Sheet, Motion = Wheel };

    private static MotionStopped Stop() => new() { Sheet = Sheet, Motion = Wheel };

    private static Sheet Of(params (double Seconds, EntryBody Body)[] said) => Ledger.Of(EntrySet.Of(Phoned(said))).Sheets.Find(Sheet)!;

    private static MotionCourse Went(double now, params (double Seconds, EntryBody Body)[] said)
        => Assert.Single(SheetMotions.AsItWent(Of(said), NoFailure, Duration.FromSeconds(100), Noon.AddSeconds(now)));
}
