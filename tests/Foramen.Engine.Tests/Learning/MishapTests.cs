using Foramen.Engine.Learning;

namespace Foramen.Engine.Tests.Learning;

public class MishapTests
{
    // A beta prior worth 20 sheets at 1 in 20 and ten more sheets of which two were cut: (1 + 2)/(20 + 10) (conjugate update; Gelman et al., BDA3, sec. 2.4).
    [Fact]
    public void Mishaps_are_counted_onto_a_beta_prior()
    {
        var sheets = Enumerable.Range(0, 10).Select(i => (IReadOnlyCollection<SheetLoss>)(i < 2 ? [SheetLoss.Frame] : []));
        var rates = MishapRates.From(sheets);
        Assert.Equal(0.1, rates.Frame.Fraction, 1e-12);
        Assert.Equal(0.8 / 30, rates.Motion.Fraction, 1e-12);
        Assert.Equal((1 - 0.1) * (1 - (0.8 / 30)) * (1 - (0.4 / 30)), rates.NoMishap.Fraction, 1e-12);
    }

    [Fact]
    public void Cuts_at_wide_margins_show_a_wide_aim()
    {
        var steady = AimingBelief.From(Enumerable.Repeat((4.0, false), 20));
        var shaky = AimingBelief.From(Enumerable.Range(0, 20).Select(i => (4.0, i % 3 == 0)));
        Assert.True(shaky.Percent > 2 * steady.Percent);
        Assert.InRange(shaky.ChanceOfCut(4).Fraction, 0.2, 0.45);
        Assert.True(steady.ChanceOfCut(2) > steady.ChanceOfCut(6));
        Assert.Equal(0.5, steady.ChanceOfCut(0).Fraction, 1e-6);
    }

    [Fact]
    public void Odds_that_were_too_low_come_up_and_nothing_changes_without_sheets()
    {
        var odds = Foramen.Engine.Quantities.Probability.FromFraction(0.6);
        var low = OddsCalibration.From(Enumerable.Range(0, 40).Select(i => new ForecastOutcome(odds, i % 10 != 0)));
        Assert.InRange(low.Calibrated(odds).Fraction, 0.75, 0.9);
        Assert.Equal(0.6, OddsCalibration.From([]).Calibrated(odds).Fraction, 0.01);
    }
}
