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

    // One of each on ten sheets, on a prior worth twenty: (1 + 1)/30, (1 + 0.8)/30, (1 + 0.4)/30.
    [Fact]
    public void Each_mishap_is_counted_for_itself()
    {
        SheetLoss[] losses = [SheetLoss.Frame, SheetLoss.Motion, SheetLoss.Process, SheetLoss.Other];
        var rates = MishapRates.From(Enumerable.Range(0, 10).Select(i => (IReadOnlyCollection<SheetLoss>)(i < losses.Length ? [losses[i]] : [])));
        Assert.Equal(2.0 / 30, rates.Frame.Fraction, 1e-12);
        Assert.Equal(1.8 / 30, rates.Motion.Fraction, 1e-12);
        Assert.Equal(1.4 / 30, rates.Process.Fraction, 1e-12);
        Assert.Equal(10, rates.Sheets);
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
    public void More_frames_make_the_aiming_error_surer()
    {
        var (none, few, many) = (AimingBelief.From([]), AimingBelief.From(Frames(10)), AimingBelief.From(Frames(200)));
        Assert.Equal(Math.Log(2), none.LogSpread, 0.02);
        Assert.True(few.LogSpread < none.LogSpread && many.LogSpread < few.LogSpread / 2);
        Assert.True(many.LikelyPercent.Low < many.Percent && many.Percent < many.LikelyPercent.High);

        static IEnumerable<(double, bool)> Frames(int count) => Enumerable.Range(0, count).Select(i => (3.0, i % 5 == 0));
    }

    [Fact]
    public void A_frame_with_a_margin_has_its_own_chance_to_spoil_a_sheet()
    {
        var rates = MishapRates.From([]);
        var close = rates.ForFrame(AimingBelief.From([]).ChanceOfCut(1));
        Assert.True(close.Frame > rates.Frame);
        Assert.Equal(rates.Motion, close.Motion);
        Assert.Equal((1 - close.Frame.Fraction) * (1 - rates.Motion.Fraction) * (1 - rates.Process.Fraction), close.NoMishap.Fraction, 1e-12);
        Assert.InRange(rates.ForFrame(AimingBelief.From([]).ChanceOfCut(-50)).Frame.Fraction, 0.98, 0.99);
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
