using CsCheck;
using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class BottleAdviceTests
{
    private static readonly DeveloperProfile Exact = DeveloperProfile.Paper with
    {
        CapacitySquareMetresPerLitre = new(4, 4, 4),
        KnownToSquareMetresPerLitre = 100,
    };

    [Fact]
    public void A_fresh_bottle_is_used()
    {
        var advice = BottleAdvice.For(DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150)));
        Assert.Equal(BottleAction.Use, advice.Action);
        Assert.Null(advice.SheetsLeft);
    }

    [Fact]
    public void A_tired_bottle_gets_more_time_then_fresh_developer_then_its_end()
    {
        var sheet = new SheetDeveloped(Cm2(516), D(0.7), Ml(0));
        var bottle = DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(500), Ml(150));
        var seen = new List<BottleAction>();
        for (var n = 0; n < 40; n++)
        {
            seen.Add(BottleAdvice.For(bottle).Action);
            bottle = bottle.After(sheet);
        }

        Assert.Equal([BottleAction.Use, BottleAction.Extend, BottleAction.TopUp, BottleAction.Replace], seen.Distinct());
        Assert.Equal(seen.Order(), seen);
    }

    [Fact]
    public void A_tenth_after_each_sheet_holds_the_bottle()
    {
        var bottle = After(10, Ml(1.5), Ml(30));
        var advice = BottleAdvice.For(bottle);
        Assert.Contains("30 ml fresh", advice.LeadsTo, StringComparison.Ordinal);
        Assert.Contains("28.5 ml to waste", advice.LeadsTo, StringComparison.Ordinal);
        Assert.Contains("9 sheets' worth", advice.LeadsTo, StringComparison.Ordinal);
        Assert.Contains("settles at", advice.LeadsTo, StringComparison.Ordinal);
        Assert.Equal(SheetsLeft.Horizon, advice.SheetsLeft!.Sheets.Low);
        Assert.Equal(BottleEnd.None, advice.SheetsLeft.End);
    }

    [Fact]
    public void Replacing_only_the_loss_lets_it_die()
    {
        var advice = BottleAdvice.For(After(10, Ml(1.5), Ml(1.5)));
        Assert.Contains("199 sheets' worth and the bottle dies", advice.LeadsTo, StringComparison.Ordinal);
        Assert.Equal(BottleEnd.Activity, advice.SheetsLeft!.End);
    }

    [Fact]
    public void Without_topping_up_it_weakens_and_shrinks()
    {
        var advice = BottleAdvice.For(After(10, Ml(1.5), Ml(0)));
        Assert.Contains("takes 1.5 ml", advice.LeadsTo, StringComparison.Ordinal);
    }

    // Count by the closed form of the additive recursion: a[n] = a* + (1 - a*)(1 - r)^n reaches 0.6 at n = ln((0.6 - a*)/(1 - a*))/ln(1 - r).
    [Fact]
    public void Sheets_left_match_the_closed_form() => Gen.Select(Gen.Double[0.002, 0.05], Gen.Double[300, 600]).Sample((r, area) =>
    {
        var bottle = DeveloperBottle.Fill(Exact, Ml(300), Ml(150));
        var steady = SteadyState.For(r, bottle.ExhaustionBy(Cm2(area), Exact.ReferenceDensity).Middle);
        var left = SheetsLeft.For(bottle, new BottleHabit(Cm2(area), Exact.ReferenceDensity, Ml(0), Ml(300 * r)));
        var byHand = steady.Additive >= 0.6
            ? SheetsLeft.Horizon
            : Math.Min(SheetsLeft.Horizon, (int)Math.Floor(Math.Log((0.6 - steady.Additive) / (1 - steady.Additive)) / Math.Log(1 - r)) + 1);
        Assert.Equal(byHand, left.Sheets.Low);
    });

    [Fact]
    public void The_last_sheet_may_be_the_last_that_is_covered()
    {
        // 200 ml, 150 to cover, 10 lost each time: sheets go in at 200, 190, 180, 170, 160 and 150.
        var left = SheetsLeft.For(DeveloperBottle.Fill(Exact, Ml(200), Ml(150)), new BottleHabit(Cm2(1), D(0.7), Ml(10), Ml(0)));
        Assert.Equal(new Spread<int>(6, 6, 6), left.Sheets);
        Assert.Equal(BottleEnd.Volume, left.End);
    }

    [Fact]
    public void Beyond_the_data_it_says_so_and_replaces()
    {
        var profile = Exact with { KnownToSquareMetresPerLitre = 0.5 };
        var bottle = DeveloperBottle.Fill(profile, Ml(300), Ml(150)).After(Enumerable.Repeat(new SheetDeveloped(Cm2(516), D(0.7), Ml(0)), 4));
        var advice = BottleAdvice.For(bottle);
        Assert.Equal(BottleAction.Replace, advice.Action);
        Assert.Contains("nothing is known beyond 0.5 m²", advice.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void An_old_bottle_is_not_trusted()
        => Assert.Contains("nothing is known beyond 30 days", BottleAdvice.For(
            DeveloperBottle.Fill(Exact, Ml(300), Ml(150)).After(new TimePassed(S(40 * 86400), false, C(20)))).Reason, StringComparison.Ordinal);

    [Fact]
    public void A_bottle_that_does_not_cover_is_filled()
    {
        var advice = BottleAdvice.For(DeveloperBottle.Fill(Exact, Ml(300), Ml(250)).After(new PouredAway(Ml(60))));
        Assert.Equal(BottleAction.TopUp, advice.Action);
        Assert.Equal(60, advice.TopUp!.Fresh.Millilitres, 1e-9);
        Assert.Equal(0, advice.TopUp.Pour.Millilitres, 1e-9);
    }

    // Half a millilitre short must not read as 150 ml that do not cover 150 ml.
    [Fact]
    public void What_is_short_by_half_a_millilitre_is_said_to_the_tenth()
        => Assert.Equal(
            "149.5 ml do not cover a sheet, which takes 150 ml.",
            BottleAdvice.For(DeveloperBottle.Fill(Exact, Ml(160), Ml(150)).After(new PouredAway(Ml(10.5)))).Reason);

    private static DeveloperBottle After(int sheets, Foramen.Engine.Quantities.Volume lost, Foramen.Engine.Quantities.Volume fresh)
    {
        var bottle = DeveloperBottle.Fill(Exact, Ml(300), Ml(150));
        var habit = new BottleHabit(Cm2(199.2), Exact.ReferenceDensity, lost, fresh);
        for (var n = 0; n < sheets; n++)
        {
            bottle = habit.Next(bottle);
        }

        return bottle;
    }
}
