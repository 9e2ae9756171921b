using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class KitPlanTests
{
    private static readonly SheetSize FourByFive = SheetSize.FromMillimetres(101.6, 127);

    private static readonly Gen<KitWish> GenWish = Gen.Select(
        Gen.Int[1, 60], Gen.Int[0, 10], Gen.Int[1, 6], Gen.Double[0, 0.3], Gen.Bool, Gen.Double[150, 600])
        .Select((sheets, spares, people, topUp, stop, developer) => new KitWish
        {
            Sheets = sheets,
            Spares = spares,
            People = people,
            Size = FourByFive,
            TopUpPart = topUp,
            Stop = stop ? Ml(300) : null,
            Developer = Ml(developer),
        });

    // By hand: 10 sheets and 3 spares; developer 300 + 13 × 30 = 690 ml at 1 + 9; stop 300 ml at 1 + 19; fixer 300 ml at 1 + 4.
    [Fact]
    public void Ten_sheets()
    {
        var plan = KitPlan.For(new KitWish { Sheets = 10, Size = FourByFive, WashChanges = 4 });
        Assert.Equal(13, plan.Paper);
        Assert.Equal(390, plan.TopUps.Millilitres, 1e-9);
        Assert.Equal([ProcessingBath.Developer, ProcessingBath.Stop, ProcessingBath.Fix, ProcessingBath.Wash], plan.Liquids.Select(each => each.Bath));
        Assert.Equal([690, 300, 300, 7800], plan.Liquids.Select(each => Math.Round(each.Working.Millilitres, 6)));
        Assert.Equal([69, 15, 60, 0], plan.Liquids.Select(each => Math.Round(each.Concentrate.Millilitres, 6)));
        Assert.Equal(144, plan.Concentrates.Millilitres, 1e-9);
        Assert.Equal(690 + 300 + 300 + (13 * 150), plan.Waste.Millilitres, 1e-9);

        // Water 8.946 kg, concentrates 0.144 l at 1.15, paper 13 × 0.0129 m² at 0.25 kg/m² (densities from memory).
        Assert.Equal(8.946 + (0.144 * 1.15) + (13 * 0.0129032 * 0.25), plan.Kilograms, 1e-6);
        Assert.Null(plan.Cost);
        Assert.Empty(plan.Remarks);
    }

    [Fact]
    public void Cost_is_the_sum_of_its_parts()
    {
        var prices = new KitPrices { Sheet = 0.8, DeveloperLitre = 20, StopLitre = 10, FixerLitre = 15 };
        var plan = KitPlan.For(new KitWish { Sheets = 10, Size = FourByFive, Prices = prices });
        Assert.Equal((13 * 0.8) + (0.069 * 20) + (0.015 * 10) + (0.060 * 15), plan.Cost!.Value, 1e-9);
    }

    [Fact]
    public void Five_people_with_one_bottle()
    {
        var plan = KitPlan.For(new KitWish { Sheets = 4, People = 5, Size = FourByFive });
        Assert.Equal(25, plan.Paper);
        Assert.Equal(25 * 135, plan.DeveloperBusy.Seconds, 1e-9);
        Assert.Contains(plan.Remarks, remark => remark.Contains("25 sheets of 5 people", StringComparison.Ordinal) && remark.Contains("56 minutes", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bottle_that_dies_is_brought_twice()
    {
        var plan = KitPlan.For(new KitWish { Sheets = 60, Size = SheetSize.FromMillimetres(203, 254), TopUpPart = 0 });
        Assert.True(plan.Liquids[0].Fills > 1);
        Assert.Contains(plan.Remarks, remark => remark.Contains("developer is sure to last", StringComparison.Ordinal));
        Assert.True(plan.Liquids[2].Fills > 1);
        Assert.Contains(plan.Remarks, remark => remark.Contains("bottle of fixer lasts", StringComparison.Ordinal));
    }

    // What each bottle is sure to last for is asked of a bottle; how many that makes, and how the last one ends, is counted here one sheet at a time.
    [Fact]
    public void Bottles_are_mixed_one_after_the_other_until_every_sheet_has_had_its_developer() => Gen.Select(Gen.Int[1, 80], Gen.Int[0, 5]).Sample((sheets, spares) =>
    {
        var wish = new KitWish { Sheets = sheets, Spares = spares, Size = SheetSize.FromMillimetres(203, 254), TopUpPart = 0 };
        var plan = KitPlan.For(wish);
        Assert.Equal(sheets + spares, plan.Paper);
        var fresh = DeveloperBottle.Fill(wish.Profile, wish.Developer, wish.Covering);
        var habit = new BottleHabit(Area.FromSides(wish.Size.Width, wish.Size.Height), wish.MeanDensity, wish.Lost, default);
        var each = SheetsLeft.For(fresh, habit).Sheets.Low;
        var (bottles, bottle, inThis) = (1, fresh, 0);
        for (var sheet = 0; sheet < plan.Paper; sheet++)
        {
            if (inThis == each)
            {
                (bottles, bottle, inThis) = (bottles + 1, fresh, 0);
            }

            bottle = habit.Next(bottle);
            inThis++;
        }

        Assert.Equal(bottles, plan.Liquids[0].Fills);
        Assert.Equal(bottles * wish.Developer.Millilitres, plan.Liquids[0].Working.Millilitres, 1e-6);
        Assert.Equal(bottle.Activity, plan.ActivityAtEnd);
        var said = plan.Remarks.SingleOrDefault(remark => remark.Contains("developer is sure to last", StringComparison.Ordinal));
        Assert.Equal(bottles > 1 ? $"A bottle of developer is sure to last for {each} sheets only, so it is mixed afresh {bottles - 1} more times." : null, said);
    });

    [Fact]
    public void Fixer_is_mixed_as_often_as_its_bottle_is_used_up() => Gen.Int[1, 120].Sample(sheets =>
    {
        var wish = new KitWish { Sheets = sheets, Spares = 0, Size = SheetSize.FromMillimetres(203, 254) };
        var (one, many) = (KitPlan.For(wish), KitPlan.For(wish with { Sheets = sheets + 1 }));
        var fills = one.Liquids[2].Fills;
        Assert.Equal(fills * wish.Fixer.Millilitres, one.Liquids[2].Working.Millilitres, 1e-6);
        Assert.InRange(many.Liquids[2].Fills, fills, fills + 1);
        if (one.Remarks.SingleOrDefault(remark => remark.Contains("bottle of fixer lasts", StringComparison.Ordinal)) is { } said)
        {
            var each = int.Parse(said.Split(' ')[6], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal($"A bottle of fixer lasts for {each} sheets, so it is mixed afresh {fills - 1} more times.", said);
            Assert.InRange(sheets, (each * (fills - 1)) + 1, each * fills);
        }
        else
        {
            Assert.Equal(1, fills);
        }
    });

    [Fact]
    public void A_bottle_that_is_renewed_with_every_sheet_is_filled_once_whatever_comes()
        => Assert.Equal(1, KitPlan.For(new KitWish { Sheets = 1000, Size = FourByFive, TopUpPart = 1, WashChanges = 1 }).Liquids[0].Fills);

    [Fact]
    public void Water_is_what_all_liquids_take_besides_concentrate()
        => Assert.Equal(621 + 285 + 240 + 7800, KitPlan.For(new KitWish { Sheets = 10, Size = FourByFive, WashChanges = 4 }).Water.Millilitres, 1e-6);

    [Fact]
    public void Bottles_too_small_for_one_sheet_are_refused()
    {
        var large = new KitWish { Sheets = 1, Size = SheetSize.FromMillimetres(1500, 1500), Covering = Ml(10), Developer = Ml(10), TopUpPart = 0 };
        Assert.Equal(
            "The fixer bottle is too small for even one such sheet; bring a larger one.",
            Assert.Throws<RefusalException>(() => KitPlan.For(large with { Developer = Ml(20_000), Fixer = Ml(10) })).Message);
        Assert.Equal(
            "The developer bottle is too small for even one such sheet; bring a larger one.",
            Assert.Throws<RefusalException>(() => KitPlan.For(large with { Lost = Ml(11) })).Message);
    }

    [Fact]
    public void As_many_washes_as_are_needed_need_no_word()
    {
        var wish = new KitWish { Sheets = 2, Size = FourByFive };
        var needed = KitPlan.For(wish).Wash.Changes;
        Assert.Empty(KitPlan.For(wish with { WashChanges = needed }).Remarks);
        Assert.Single(KitPlan.For(wish with { WashChanges = needed - 1 }).Remarks);
    }

    [Fact]
    public void Too_few_washes_are_said()
        => Assert.Contains("wash again at home", Assert.Single(KitPlan.For(new KitWish { Sheets = 2, Size = FourByFive, WashChanges = 1 }).Remarks), StringComparison.Ordinal);

    [Fact]
    public void All_that_is_made_up_is_concentrate_and_water() => GenWish.Sample(wish =>
    {
        var plan = KitPlan.For(wish);
        foreach (var liquid in plan.Liquids)
        {
            Assert.Equal(liquid.Working.Millilitres, liquid.Concentrate.Millilitres + liquid.Water.Millilitres, 1e-6);
        }

        Assert.True(plan.ActivityAtEnd.Low >= 0);
        Assert.True(plan.Waste.Millilitres >= wish.Developer.Millilitres);
    });

    [Fact]
    public void More_pictures_never_need_less() => GenWish.Sample(wish =>
    {
        var plan = KitPlan.For(wish);
        var more = KitPlan.For(wish with { Sheets = wish.Sheets + 1 });
        Assert.True(more.Paper >= plan.Paper && more.Kilograms > plan.Kilograms && more.Waste > plan.Waste);
        Assert.True(more.Concentrates >= plan.Concentrates);
    });

    [Fact]
    public void The_list_names_everything_once()
    {
        var lines = PackingList.For(KitPlan.For(new KitWish { Sheets = 10, Size = FourByFive }));
        Assert.Contains("13 sheets of paper in a lightproof box", lines);
        Assert.Contains("developer: 690 ml, from 69 ml concentrate and 621 ml water", lines);
        Assert.Contains("of the developer, 390 ml in a bottle of its own for topping up", lines);
        Assert.Contains("waste containers for 3.2 l, with labels and tight caps", lines);
        Assert.Contains("gloves, and spare ones", lines);
        Assert.Equal(lines.Count, lines.Distinct().Count());
    }

    [Fact]
    public void Absurd_wishes_are_refused()
    {
        var wish = new KitWish { Sheets = 10, Size = FourByFive };
        Assert.Throws<RefusalException>(() => wish with { Sheets = 0 });
        Assert.Throws<RefusalException>(() => wish with { TopUpPart = -0.1 });
        Assert.Throws<RefusalException>(() => new KitPrices { Sheet = double.NaN });
        Assert.Contains("to cover", Assert.Throws<RefusalException>(() => KitPlan.For(wish with { Fixer = Ml(100) })).Message, StringComparison.Ordinal);
        Assert.Equal(
            "The developer is 100 ml and 150 ml are needed to cover the sheet; bring more.",
            Assert.Throws<RefusalException>(() => KitPlan.For(wish with { Developer = Ml(100) })).Message);
        Assert.StartsWith("What covers a sheet is 0 ml", Assert.Throws<RefusalException>(() => wish with { Covering = Ml(0) }).Message, StringComparison.Ordinal);
    }
}
