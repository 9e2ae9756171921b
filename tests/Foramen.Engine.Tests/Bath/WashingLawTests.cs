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
