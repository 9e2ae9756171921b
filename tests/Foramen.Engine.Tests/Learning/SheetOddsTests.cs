using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Learning;

public class SheetOddsTests
{
    // Before any sheet: frame 1 in 20, motion 1 in 25, process 1 in 50; none of them 0.95·0.96·0.98.
    private const double None = 0.95 * 0.96 * 0.98;

    private static readonly MishapRates Mishaps = MishapRates.From([]);

    // Tones 0.6. Paper gains 0.10 + 0.05 + 0.02, meter 0.02 + 0.03 + 0.01, light 0.01 + 0.04, process 0.06 + 0.005 and its mishap, scene nothing; a source whose loss would
    // make it worse gains nothing.
    [Fact]
    public void Each_part_gains_what_its_sources_gain_and_its_mishap_costs()
    {
        var odds = SheetOdds.Of(
            Forecast(
                0.6, (ErrorSource.Paper, 0.70), (ErrorSource.Failure, 0.65), (ErrorSource.Flash, 0.62), (ErrorSource.Meter, 0.62), (ErrorSource.ToneReadings, 0.63),
                (ErrorSource.Hole, 0.61), (ErrorSource.Light, 0.61), (ErrorSource.Colour, 0.64), (ErrorSource.Development, 0.66), (ErrorSource.Timing, 0.605)),
            Mishaps);
        const double total = 0.6 * None;
        Dictionary<OddsPart, double> without = new()
        {
            [OddsPart.Paper] = 0.77 * None,
            [OddsPart.Meter] = 0.66 * None,
            [OddsPart.Light] = 0.65 * None,
            [OddsPart.Process] = (0.665 * None) + (total / 0.98) - total,
            [OddsPart.Frame] = total / 0.95,
            [OddsPart.Motion] = total / 0.96,
        };
        Assert.Equal(total, odds.Total.Fraction, 1e-12);
        Assert.Equal(0.6, odds.Tones.Fraction);
        Assert.Same(Mishaps, odds.Mishaps);
        Assert.Equal(without.Count, odds.Shares.Count);
        var lost = without.Values.Sum(value => value - total);
        Assert.All(odds.Shares, share =>
        {
            Assert.Equal(without[share.Part], share.OddsWithout.Fraction, 1e-9);
            Assert.Equal((without[share.Part] - total) / lost, share.Share, 1e-9);
        });
        Assert.Equal(without.OrderByDescending(pair => pair.Value).Select(pair => pair.Key), odds.Shares.Select(share => share.Part));
    }

    [Fact]
    public void A_source_without_which_the_odds_were_worse_gains_nothing()
    {
        var odds = SheetOdds.Of(Forecast(0.6, (ErrorSource.Paper, 0.7), (ErrorSource.Light, 0.5)), Mishaps);
        Assert.Equal(0.6 * None, odds.Shares.Single(share => share.Part == OddsPart.Light).OddsWithout.Fraction, 1e-12);
        Assert.Equal(0, odds.Shares.Single(share => share.Part == OddsPart.Light).Share, 1e-12);
    }

    // A scene that asks too much costs all that is missing: without it the tones would be certain.
    [Fact]
    public void A_scene_with_too_much_range_costs_all_that_the_tones_lack()
    {
        var odds = SheetOdds.Of(Forecast(0.02, (ErrorSource.SceneRange, 0.02)), Mishaps);
        Assert.Equal(OddsPart.Scene, odds.Shares[0].Part);
        Assert.Equal(None, odds.Shares[0].OddsWithout.Fraction, 1e-12);
    }

    // Two sources that would each make it certain: no part can gain more than all.
    [Fact]
    public void No_part_gains_more_than_certainty()
    {
        var odds = SheetOdds.Of(Forecast(0.9, (ErrorSource.Paper, 1), (ErrorSource.Failure, 1)), Mishaps);
        Assert.Equal(None, odds.Shares.Single(share => share.Part == OddsPart.Paper).OddsWithout.Fraction, 1e-12);
    }

    [Fact]
    public void Where_nothing_can_be_gained_nothing_has_a_share_and_the_parts_stand_in_their_order()
    {
        var odds = SheetOdds.Of(Forecast(0, (ErrorSource.Light, 0), (ErrorSource.Paper, 0)), Mishaps);
        Assert.Equal([OddsPart.Paper, OddsPart.Light, OddsPart.Frame, OddsPart.Process, OddsPart.Motion], odds.Shares.Select(share => share.Part));
        Assert.All(odds.Shares, share => Assert.Equal(0, share.Share));
    }

    private static ExposureForecast Forecast(double odds, params (ErrorSource Source, double Without)[] limits) => new(
        new SheetExposure(Duration.FromSeconds(60), default),
        0,
        Stops.Zero,
        [],
        Probability.FromFraction(odds),
        limits[0].Source,
        [.. limits.Select(limit => new LimitShare(limit.Source, Probability.FromFraction(limit.Without), 0))],
        Stops.Zero);
}
