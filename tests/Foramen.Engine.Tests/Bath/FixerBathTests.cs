using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class FixerBathTests
{
    // One bath, for prints that are to last.
    private static readonly FixerLimits Limits = FixerLimits.From(0.5, 2.73);

    [Fact]
    public void The_order_of_sheets_does_not_matter() => Gen.Select(Gen.Double[1, 500], Gen.Double[0, 0.1]).Array[2, 12].Sample(sheets =>
    {
        var one = Fold(sheets);
        var other = Fold(sheets.Reverse());
        Assert.Equal(one.SilverGramsPerLitre, other.SilverGramsPerLitre, 1e-12);
        Assert.Equal(one.SquareMetresPerLitre, other.SquareMetresPerLitre, 1e-12);
    });

    [Fact]
    public void Sheets_left_is_the_last_that_keeps_the_limits() => Gen.Select(Gen.Double[20, 500], Gen.Double[0.002, 0.1], Gen.Double[0.15, 0.9]).Sample((area, silver, refreshed) =>
    {
        var bath = FixerBath.Fill(Ml(300), Limits);
        var left = bath.SheetsLeft(Cm2(area), silver, refreshed);
        Assert.True(left >= bath.SheetsLeft(Cm2(area), silver));
        for (var n = 0; n < Math.Min(left, 500); n++)
        {
            bath = bath.AfterSheet(Cm2(area), silver);
            Assert.False(bath.IsSpent);
            bath = bath.Refreshed(refreshed);
        }

        Assert.True(left == 10_000 || bath.AfterSheet(Cm2(area), silver).IsSpent);
    });

    [Fact]
    public void A_darker_print_gives_less_silver()
    {
        Assert.Equal(1, SilverCoating.UndevelopedPart(D(0), D(2)));
        Assert.Equal(0.75, SilverCoating.UndevelopedPart(D(0.5), D(2)), 1e-12);
        Assert.Equal(0, SilverCoating.UndevelopedPart(D(2.1), D(2)));
    }

    // Common practice, no source: about four minutes in a tank, whatever the fixer.
    [Fact]
    [Source("common-practice")]
    public void Four_minutes_are_enough_for_ammonium_but_not_for_sodium()
    {
        Assert.True(FixingTime.Usual(FixerKind.AmmoniumPaper).Seconds <= 240);
        Assert.InRange(FixingTime.Usual(FixerKind.Sodium).Seconds, 300, 600);
    }

    [Fact]
    public void Absurd_fixers_are_refused()
    {
        Assert.Contains("68 °F meant", Assert.Throws<RefusalException>(() => FixingTime.At(S(240), C(68))).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => FixingTime.At(S(240), C(-2)));
        Assert.Throws<RefusalException>(() => FixerBath.Fill(default, Limits));
        Assert.Throws<RefusalException>(() => FixerBath.Fill(Ml(300), Limits).Refreshed(1.1));
        Assert.Throws<RefusalException>(() => FixerLimits.From(double.NaN, 1));
    }

    private static FixerBath Fold(IEnumerable<(double Area, double Silver)> sheets)
        => sheets.Aggregate(FixerBath.Fill(Ml(300), Limits), (bath, each) => bath.AfterSheet(Cm2(each.Area), each.Silver));
}
