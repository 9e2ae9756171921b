using CsCheck;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Learning.PublishedValues;

/// <summary>
/// Brier's score (G. W. Brier, Mon. Wea. Rev. 78, 1, 1950) and Murphy's decomposition (A. H. Murphy, J. Appl. Meteor. 12, 595, 1973), against examples worked by hand from
/// their formulas; Wilson's interval (J. Am. Stat. Assoc. 22, 209, 1927) against its own closed form.
/// </summary>
public class BrierScoreTests
{
    // The layout of Brier's own example, ten forecasts of rain with three rainy days (1950, table 1; figures from memory, so only the arithmetic is checked):
    // 0.49 + 0.01 + 0.04 + 0.16 + 0.64 + 0.01 = 1.35 over ten. Brier counts rain and no rain both and so gets twice this.
    [Fact]
    [Source("brier-1950", "table 1", Basis.Memory)]
    public void Ten_forecasts_of_rain()
    {
        double[] odds = [0.7, 0.9, 0.8, 0.4, 0.2, 0.0, 0.0, 0.0, 0.0, 0.1];
        bool[] rain = [false, true, true, false, true, false, false, false, false, false];
        Assert.Equal(0.135, ForecastScores.Of([.. odds.Zip(rain, Outcome)])!.Brier, 1e-12);
    }

    // Worked by hand: groups 0.9 (1, 1), 0.6 (1, 0), 0.3 (0); share of keepers 0.6.
    [Fact]
    [Source("murphy-1973", Basis.Worked)]
    public void Five_sheets_worked_by_hand()
    {
        var scores = ForecastScores.Of([Outcome(0.9, true), Outcome(0.9, true), Outcome(0.6, true), Outcome(0.6, false), Outcome(0.3, false)])!;
        Assert.Equal(0.1260, scores.Brier, 1e-12);
        Assert.Equal(0.0260, scores.Reliability, 1e-12);
        Assert.Equal(0.1400, scores.Resolution, 1e-12);
        Assert.Equal(0.2400, scores.Uncertainty, 1e-12);
        Assert.Equal(0.3989, scores.LogScore, 5e-5);
        Assert.False(scores.IsTelling);
    }

    [Fact]
    [Source("murphy-1973")]
    public void The_parts_add_up_whatever_the_forecasts()
        => Gen.Select(Gen.Int[0, 10], Gen.Bool, (odds, keeper) => (odds, keeper)).Array[1, 60].Sample(pairs =>
        {
            var scores = ForecastScores.Of([.. pairs.Select(pair => Outcome(pair.odds / 10.0, pair.keeper))])!;
            Assert.Equal(scores.Brier, scores.Reliability - scores.Resolution + scores.Uncertainty, 1e-12);
            Assert.Equal(pairs.Length, scores.Bins.Sum(bin => bin.Sheets));
        });

    // From the formula: 7 of 10, z 1.96: (0.7 + 0.19208 ± 1.96·sqrt(0.021 + 0.009604))/1.38416.
    [Fact]
    [Source("wilson-1927", Basis.Worked)]
    public void Wilson_s_interval()
    {
        var interval = ShareInterval.Wilson(7, 10);
        Assert.Equal(0.3968, interval.Low.Fraction, 1e-4);
        Assert.Equal(0.8922, interval.High.Fraction, 1e-4);
        Assert.Equal(0, ShareInterval.Wilson(0, 5).Low.Fraction);
    }

    [Fact]
    [OwnRule]
    public void The_hit_rate_looks_back_over_a_window()
    {
        var rates = HitRate.OverTime([true, false, true, true], 2);
        Assert.Equal([1, 0.5, 0.5, 1], rates.Select(rate => rate.Share.Fraction));
        Assert.Equal((3, 4), (rates[^1].FirstSheet, rates[^1].LastSheet));
    }

    [Fact]
    [OwnRule]
    public void Without_odds_there_is_no_score() => Assert.Null(ForecastScores.Of([]));

    private static ForecastOutcome Outcome(double odds, bool keeper) => new(Probability.FromFraction(odds), keeper);
}
