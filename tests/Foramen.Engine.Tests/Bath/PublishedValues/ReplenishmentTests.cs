using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>
/// Replenishment as a linear recursion, worked apart from this code (geometric series, any textbook of difference equations):
/// multiplicative a ← (1 − r)(1 − e)a + r, additive a ← (1 − r)(a − e) + r, by-product b ← (1 − r)(b + 1).
/// </summary>
[Source("difference-equations", Basis.Worked)]
public class ReplenishmentTests
{
    // m²/l, low, middle and high alike: then the bounds of the activity are the two models.
    private const double Capacity = 4;

    [Theory]
    [InlineData(0.10, 0.01, 0.9174, 0.9910, 0.9638, 0.9502, 0.9256)]
    [InlineData(0.10, 0.02, 0.8475, 0.9820, 0.9289, 0.9033, 0.8598)]
    [InlineData(0.10, 0.05, 0.6897, 0.9550, 0.8315, 0.7783, 0.7032)]
    [InlineData(0.05, 0.02, 0.7246, 0.9810, 0.9172, 0.8801, 0.7905)]
    [InlineData(0.20, 0.05, 0.8333, 0.9600, 0.8756, 0.8519, 0.8340)]
    public void Multiplicative(double r, double e, double end, double one, double five, double eight, double twenty)
    {
        Assert.Equal(end, SteadyState.For(r, e).Multiplicative, 0.00006);
        Assert.Equal([one, five, eight, twenty], At(r, e, 1, 5, 8, 20).Select(bottle => Math.Round(bottle.Activity.High, 4)));
    }

    [Theory]
    [InlineData(0.10, 0.02, 0.8200, 0.9820, 0.9263, 0.8975, 0.8419)]
    [InlineData(0.10, 0.05, 0.5500, 0.9550, 0.8157, 0.7437, 0.6047)]
    public void Additive(double r, double e, double end, double one, double five, double eight, double twenty)
    {
        Assert.Equal(end, SteadyState.For(r, e).Additive, 0.00006);
        Assert.Equal([one, five, eight, twenty], At(r, e, 1, 5, 8, 20).Select(bottle => Math.Round(bottle.Activity.Low, 4)));
    }

    [Fact]
    public void By_products_of_a_tenth()
    {
        Assert.Equal(9, SteadyState.For(0.1, 0.02).ByProductSheets, 1e-12);
        Assert.Equal([0.900, 3.686, 5.126, 7.906], At(0.1, 0.02, 1, 5, 8, 20).Select(bottle => Math.Round(Sheets(bottle), 3)));

        // Half of the way after 6.6 sheets, 95 % after 28.4.
        Assert.Equal([true, false, true, false], At(0.1, 0.02, 6, 7, 28, 29).Zip([0.5, 0.5, 0.95, 0.95], (bottle, part) => Sheets(bottle) < 9 * part));

        static double Sheets(DeveloperBottle bottle) => bottle.ByProductsSquareMetresPerLitre / (0.02 * Capacity);
    }

    [Fact]
    public void By_products_of_replacing_only_the_loss()
        => Assert.Equal(199, SteadyState.For(0.005, 0.02).ByProductSheets, 1e-9);

    [Fact]
    public void A_bottle_that_fails()
    {
        Assert.Equal(-0.90, SteadyState.For(0.05, 0.10).Additive, 1e-9);
    }

    // The fold itself, event by event, against the closed form: a half-plate (199.2 cm²) at 4 m²/l in 300 ml is e = 0.0166.
    [Fact]
    public void The_bottle_follows_the_closed_form()
    {
        var profile = DeveloperProfile.Paper with { CapacitySquareMetresPerLitre = new(4, 4, 4) };
        var bottle = DeveloperBottle.Fill(profile, Ml(300), Ml(150));
        var e = bottle.ExhaustionBy(Cm2(199.2), profile.ReferenceDensity).Middle;
        Assert.Equal(0.0166, e, 0.00005);

        // 300 ml: add 30, lost 1.5, so 28.5 to waste.
        var habit = new BottleHabit(Cm2(199.2), profile.ReferenceDensity, Ml(1.5), Ml(30));
        var used = bottle.After(new SheetDeveloped(habit.Area, habit.MeanDensity, habit.Lost));
        Assert.Equal(28.5, TopUp.Part(used, 0.1).Pour.Millilitres, 1e-9);

        var steady = SteadyState.For(0.1, e);
        for (var sheet = 1; sheet <= 300; sheet++)
        {
            bottle = habit.Next(bottle);
            Assert.Equal(steady.Multiplicative + ((1 - steady.Multiplicative) * Math.Pow(0.9 * (1 - e), sheet)), bottle.Activity.High, 1e-9);
            Assert.Equal(steady.Additive + ((1 - steady.Additive) * Math.Pow(0.9, sheet)), bottle.Activity.Low, 1e-9);
        }

        Assert.Equal(steady.Additive, bottle.Activity.Low, 1e-9);
        Assert.Equal(steady.Multiplicative, bottle.Activity.High, 1e-9);
        Assert.Equal(9 * 0.01992 / 0.3, bottle.ByProductsSquareMetresPerLitre, 1e-9);
    }

    // If nothing is poured away, 10 % added and 0.5 % lost: volume × 1.095 and a fresh part of 0.0913.
    [Fact]
    public void Topping_up_without_pouring_grows_the_bottle()
    {
        var bottle = DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150), Ml(1000));
        var used = bottle.After(new SheetDeveloped(Cm2(199.2), D(0.7), Ml(1.5)));
        var topped = used.After(new FreshAdded(Ml(30)));
        Assert.Equal(300 * 1.095, topped.Volume.Millilitres, 1e-9);
        Assert.Equal(0.0913, (topped.Activity.Low - used.Activity.Low) / (1 - used.Activity.Low), 0.00005);
    }

    // Without topping up, e 0.05: after 8 sheets 0.6000 additive, 0.6634 multiplicative.
    [Fact]
    public void Without_topping_up()
    {
        var profile = DeveloperProfile.Paper with { CapacitySquareMetresPerLitre = new(4, 4, 4) };
        var sheet = new SheetDeveloped(Cm2(600), profile.ReferenceDensity, Ml(0));
        var bottle = DeveloperBottle.Fill(profile, Ml(300), Ml(150)).After(Enumerable.Repeat(sheet, 8));
        Assert.Equal(0.6000, bottle.Activity.Low, 0.00005);
        Assert.Equal(0.6634, bottle.Activity.High, 0.00005);
    }

    // A bottle of a litre after so many sheets of the part e, each followed by fresh developer for the part r.
    private static IEnumerable<DeveloperBottle> At(double r, double e, params int[] sheets)
    {
        var profile = DeveloperProfile.Paper with { CapacitySquareMetresPerLitre = new(Capacity, Capacity, Capacity) };
        var habit = new BottleHabit(Cm2(e * Capacity * 10_000), profile.ReferenceDensity, Ml(0), Ml(1000 * r));
        return sheets.Select(count => Enumerable.Range(0, count).Aggregate(DeveloperBottle.Fill(profile, Ml(1000), Ml(150)), (bottle, _) => habit.Next(bottle)));
    }
}
