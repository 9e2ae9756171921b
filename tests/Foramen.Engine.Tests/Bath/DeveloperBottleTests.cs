using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class DeveloperBottleTests
{
    private static readonly DeveloperProfile Paper = DeveloperProfile.Paper;

    private static readonly Gen<BottleEvent> GenEvent = Gen.OneOf<BottleEvent>(
        Gen.Select(Gen.Double[10, 500], Gen.Double[0, 2], Gen.Double[0, 3]).Select((a, d, l) => (BottleEvent)new SheetDeveloped(Cm2(a), D(d), Ml(l))),
        Gen.Select(Gen.Double[0, 40], Gen.Double[0, 1]).Select((v, s) => (BottleEvent)new FreshAdded(Ml(v), s)),
        Gen.Double[0, 40].Select(v => (BottleEvent)new PouredAway(Ml(v))),
        Gen.Select(Gen.Double[0, 1e5], Gen.Bool, Gen.Double[5, 35]).Select((t, o, c) => (BottleEvent)new TimePassed(S(t), o, C(c))),
        Gen.Select(Gen.Double[4, 40], GenWorkingCelsius).Select((t, c) => (BottleEvent)new ImageAppeared(S(t), C(c))));

    [Fact]
    public void Volume_is_conserved_and_activity_stays_in_its_range() => GenEvent.Array[0, 60].Sample(events =>
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        foreach (var each in events)
        {
            bottle = AfterIfPossible(bottle, each);
            Assert.Equal(
                bottle.Filled.Millilitres + bottle.Added.Millilitres,
                bottle.Volume.Millilitres + bottle.Lost.Millilitres + bottle.Poured.Millilitres,
                1e-6);
            Assert.True(bottle.Volume.Millilitres <= bottle.Capacity.Millilitres + 0.011);
            Assert.InRange(bottle.Activity.Low, 0, bottle.Activity.Middle);
            Assert.InRange(bottle.Activity.High, bottle.Activity.Middle, 1.2 + 1e-12);
        }
    });

    [Fact]
    public void Advice_never_breaks_and_never_lengthens_what_is_too_weak() => GenEvent.Array[0, 60].Sample(events =>
    {
        var bottle = events.Aggregate(DeveloperBottle.Fill(Paper, Ml(300), Ml(150)), AfterIfPossible);
        var advice = BottleAdvice.For(bottle);
        Assert.EndsWith(".", advice.Reason, StringComparison.Ordinal);
        if (bottle.Activity.Middle < Paper.ActivityLimit)
        {
            Assert.Equal(BottleAction.Replace, advice.Action);
        }

        if (advice.TopUp is { } topUp)
        {
            var topped = bottle.After(topUp.Events);
            Assert.True(topped.Volume >= bottle.Volume || topped.Volume >= bottle.Covering);
            Assert.True(topped.Activity.Middle >= bottle.Activity.Middle - 1e-9 || bottle.Activity.Middle > 1);
        }

        if (advice.SheetsLeft is { } left)
        {
            Assert.InRange(left.Sheets.Middle, left.Sheets.Low, left.Sheets.High);
        }
    });

    [Fact]
    public void A_sheet_never_strengthens_and_a_darker_one_takes_more() => Gen.Select(Gen.Double[0, 500], Gen.Double[0, 2], Gen.Double[0, 1]).Sample((area, density, more) =>
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        var light = bottle.After(new SheetDeveloped(Cm2(area), D(density), default));
        var dark = bottle.After(new SheetDeveloped(Cm2(area), D(density + more), default));
        Assert.True(light.Activity.Low <= bottle.Activity.Low && dark.Activity.Low <= light.Activity.Low);
        Assert.True(light.Activity.High <= bottle.Activity.High && dark.Activity.High <= light.Activity.High);
    });

    [Fact]
    public void The_additive_model_is_the_harsher() => GenEvent.Where(each => each is not ImageAppeared).Array[0, 60].Sample(events =>
    {
        var bottle = events.Aggregate(DeveloperBottle.Fill(Paper, Ml(300), Ml(150)), AfterIfPossible);
        Assert.True(bottle.AdditiveActivity <= bottle.MultiplicativeActivity + 1e-12);
    });

    // Fresh developer restrains nothing: with no ageing, the additive model is fresh strength less the by-products' share.
    [Fact]
    public void The_additive_model_is_the_line_of_the_by_products() => Gen.Select(Gen.Double[1, 100], Gen.Double[0, 40]).Array[1, 20].Sample(cycles =>
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        foreach (var (area, fresh) in cycles)
        {
            bottle = new BottleHabit(Cm2(area), D(0.7), Ml(1), Ml(fresh)).Next(bottle);
        }

        Assert.Equal(1 - (bottle.ByProductsSquareMetresPerLitre / Paper.CapacitySquareMetresPerLitre.Middle), bottle.AdditiveActivity, 1e-9);
    });

    [Fact]
    public void Time_passes_the_same_in_one_piece_or_two() => Gen.Select(Gen.Double[0, 1e6], Gen.Double[0, 1e6], Gen.Bool).Sample((a, b, open) =>
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        var once = bottle.After(new TimePassed(S(a + b), open, C(20)));
        var twice = bottle.After([new TimePassed(S(a), open, C(20)), new TimePassed(S(b), open, C(20))]);
        Assert.Equal(once.Activity.Middle, twice.Activity.Middle, 1e-9);
        Assert.Equal(once.Age.Seconds, twice.Age.Seconds, 1e-6);
    });

    [Fact]
    public void An_open_tray_ages_faster_than_a_bottle_and_a_warm_one_faster_than_a_cool()
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        double After(bool open, double celsius) => bottle.After(new TimePassed(S(8 * 3600), open, C(celsius))).Activity.Middle;
        Assert.True(After(true, 20) < After(false, 20));
        Assert.True(After(true, 28) < After(true, 20));
        Assert.Equal(Math.Exp(-0.02 * 8), After(true, 20), 1e-12);
    }

    [Fact]
    public void What_is_seen_narrows_what_is_believed()
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150))
            .After(Enumerable.Repeat(new SheetDeveloped(Cm2(129), D(0.9), Ml(1)), 20));
        var before = bottle.Activity;
        var seen = bottle.After(new ImageAppeared(S(10 / before.Middle), C(20))).Activity;
        Assert.True(seen.High - seen.Low <= before.High - before.Low);
        Assert.InRange(before.Middle, seen.Low, seen.High);
    }

    [Fact]
    public void What_is_seen_stands_against_all_models()
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        var seen = bottle.After(new ImageAppeared(S(20), C(20))).Activity;
        Assert.Equal(0.5, seen.Middle, 1e-9);
        Assert.True(seen.Low < 0.5 && seen.High > 0.5);
    }

    [Fact]
    public void Impossible_events_are_refused_in_a_sentence()
    {
        var bottle = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        Assert.Contains("pour 30 ml to waste before", Refusal(() => bottle.After(new FreshAdded(Ml(30)))), StringComparison.Ordinal);
        Assert.Contains("300 ml in it", Refusal(() => bottle.After(new PouredAway(Ml(301)))), StringComparison.Ordinal);
        Assert.Contains("strength", Refusal(() => bottle.After(new FreshAdded(Ml(0), -1))), StringComparison.Ordinal);
        Assert.Contains("150 ml are needed to cover", Refusal(() => bottle.After(new PouredAway(Ml(200))).After(new SheetDeveloped(Cm2(129), D(0.7), Ml(1)))), StringComparison.Ordinal);
        Assert.Contains("do not fit", Refusal(() => DeveloperBottle.Fill(Paper, Ml(300), Ml(150), Ml(250))), StringComparison.Ordinal);
        Assert.Contains("cover the sheet", Refusal(() => DeveloperBottle.Fill(Paper, Ml(100), Ml(150))), StringComparison.Ordinal);
        Assert.Contains("less", Refusal(() => QuantityText.Volume("-5 ml", "the top-up")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_thousand_sheets_fold_and_forecast()
    {
        var start = DeveloperBottle.Fill(Paper, Ml(300), Ml(150));
        var cycle = new BottleEvent[] { new TimePassed(S(900), false, C(20)), new SheetDeveloped(Cm2(129), D(0.7), Ml(1.5)), new PouredAway(Ml(28.5)), new FreshAdded(Ml(30)) };
        var bottle = start.After(Enumerable.Repeat(cycle, 1000).SelectMany(each => each).ToArray());
        Assert.Equal(1000, bottle.Sheets);
        Assert.Equal(SheetsLeft.Horizon, SheetsLeft.For(bottle, BottleHabit.Of(bottle)!).Sheets.High);
    }

    private static string Refusal(Action action) => Assert.Throws<RefusalException>(action).Message;

    private static DeveloperBottle AfterIfPossible(DeveloperBottle bottle, BottleEvent each)
    {
        try
        {
            return bottle.After(each);
        }
        catch (RefusalException)
        {
            return bottle;
        }
    }

    // Our choice: the rate of ageing is known to a factor of two, so the bounds are those of half and twice the time.
    [Fact]
    public void The_spread_grows_with_age()
    {
        static Spread<double> After(double hours) => DeveloperBottle.Fill(Paper, Ml(300), Ml(150)).After(new TimePassed(S(3600 * hours), true, C(20))).Activity;

        var aged = After(5);
        Assert.Equal(After(2.5).Middle, aged.High, 1e-12);
        Assert.Equal(After(10).Middle, aged.Low, 1e-12);
    }
}
