using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class WashingLawTests
{
    private static readonly Gen<double> GenKept = Gen.Double[0.5, 50];

    [Fact]
    public void The_same_water_in_more_changes_washes_better() => Gen.Select(GenKept, Gen.Double[100, 2000], Gen.Int[1, 20]).Sample((kept, water, changes) =>
        FillAndDump.Left(Ml(kept), Ml(water / (changes + 1)), changes + 1) < FillAndDump.Left(Ml(kept), Ml(water / changes), changes));

    [Fact]
    public void Changes_needed_are_enough_and_one_less_is_not() => Gen.Select(Gen.Double[-6, -0.1], GenKept, Gen.Double[20, 2000], Gen.Double[0.2, 1])
        .Sample((lg, kept, filling, equilibrium) =>
        {
            var target = Math.Pow(10, lg);
            var changes = FillAndDump.ChangesNeeded(target, Ml(kept), Ml(filling), equilibrium);
            Assert.True(FillAndDump.Left(Ml(kept), Ml(filling), changes, equilibrium) <= target * (1 + 1e-6));
            Assert.True(changes == 0 || FillAndDump.Left(Ml(kept), Ml(filling), changes - 1, equilibrium) > target);
        });

    [Fact]
    public void Less_is_left_with_time_and_the_two_forms_meet() => Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 1000]).Sample((a, b) =>
    {
        var layer = WashingOut.Fibre;
        Assert.True(layer.Left(S(Math.Max(a, b))) <= layer.Left(S(Math.Min(a, b))) + 1e-12);
        Assert.InRange(layer.Left(S(a)), 0, 1);
        Assert.Equal(layer.Left(S(12.4999999)), layer.Left(S(12.5000001)), 1e-7);
    });

    [Fact]
    public void A_plan_reaches_its_target() => Gen.Select(Gen.Bool, Gen.Double[50, 2000], Gen.Double[1, 30], Gen.Double[100, 1000], Gen.Double[4, 30])
        .Sample((fibre, area, walls, filling, celsius) =>
            WashPlan.For(fibre ? SheetBase.Fibre : SheetBase.Coated, Cm2(area), Ml(walls), Ml(filling), C(celsius)).LeftGramsPerSquareMetre <= WashPlan.FilmTarget);

    private static WashPlan Plan(SheetBase sheetBase, double celsius, double walls = 8) => WashPlan.For(sheetBase, Cm2(129), Ml(walls), Ml(250), C(celsius));

    // What the cold slows is made up by standing longer, so that as much is left; warmth shortens nothing.
    [Fact]
    public void Cold_water_asks_for_time_and_for_nothing_else() => Gen.Select(Gen.Bool, Gen.Double[1, 35], Gen.Double[1, 30]).Sample((fibre, celsius, walls) =>
    {
        var kind = fibre ? SheetBase.Fibre : SheetBase.Coated;
        var (plan, usual) = (Plan(kind, celsius, walls), Plan(kind, 20, walls));
        Assert.Equal(Math.Max(1, Math.Exp((20 - celsius) / 10 * Math.Log(2))), plan.EachChange.Seconds / usual.EachChange.Seconds, 1e-9);
        Assert.Equal(usual.Changes, plan.Changes);
        Assert.Equal(usual.LeftGramsPerSquareMetre, plan.LeftGramsPerSquareMetre, 1e-12);
    });

    // exp(−3) = 0.05: of fibre what the water takes has come out but for a twentieth; of the thin coating all of it long before the twenty seconds a hand needs.
    [Fact]
    public void A_change_stands_until_nearly_all_has_come_out()
    {
        Assert.InRange(WashingOut.Fibre.Left(Plan(SheetBase.Fibre, 20).EachChange), 0.03, 0.05);
        Assert.Equal(20, Plan(SheetBase.Coated, 20).EachChange.Seconds);
        Assert.True(WashingOut.Coated.Left(S(20)) < 0.05);
    }

    // What is left does not depend on how large the sheet is, if walls and water grow with it.
    [Fact]
    public void A_sheet_of_any_size_is_washed_alike() => Gen.Select(Gen.Bool, Gen.Double[0.1, 10]).Sample((fibre, times) =>
    {
        var kind = fibre ? SheetBase.Fibre : SheetBase.Coated;
        var (one, other) = (WashPlan.For(kind, Cm2(129), Ml(8), Ml(250), C(20)), WashPlan.For(kind, Cm2(129 * times), Ml(8 * times), Ml(250 * times), C(20)));
        Assert.Equal(one.LeftGramsPerSquareMetre, other.LeftGramsPerSquareMetre, 1e-9);
        Assert.Equal(one.Changes, other.Changes);
    });

    // Fibre soaks fixer up, a coated base does not (common practice, no source).
    [Fact]
    public void Fibre_takes_more_washing() => Gen.Select(Gen.Double[1, 30], Gen.Double[1, 35]).Sample((walls, celsius) =>
    {
        var (fibre, coated) = (Plan(SheetBase.Fibre, celsius, walls), Plan(SheetBase.Coated, celsius, walls));
        Assert.True(fibre.Changes > coated.Changes && fibre.EachChange > coated.EachChange);
    });

    [Fact]
    public void Absurd_washes_are_refused()
    {
        Assert.Throws<RefusalException>(() => FillAndDump.Left(Ml(0), Ml(250), 1));
        Assert.Throws<RefusalException>(() => FillAndDump.Left(Ml(8), Ml(250), -1));
        Assert.Throws<RefusalException>(() => FillAndDump.ChangesNeeded(double.NaN, Ml(8), Ml(250)));
        Assert.Throws<RefusalException>(() => WashPlan.For(SheetBase.Coated, Cm2(129), Ml(8), Ml(250), C(68)));
        Assert.Throws<RefusalException>(() => WashingOut.FromLayer(default, 1e-10));
    }
}
