using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Learning;

public class ForecastDiagramTests
{
    // Five bars. By hand: 0.95 and 1.0 in the last (mean 0.975, half kept, off 0.475), 0.5 and 0.42 and 0.58 in the middle one (mean 0.5, one of three kept, off 1/6),
    // 0.05 in the first (none kept, off 0.05): (2·0.475 + 3/6 + 0.05)/6 = 0.25.
    [Fact]
    public void Bars_hold_the_sheets_whose_odds_fall_into_them_worked_by_hand()
    {
        var scores = ForecastScores.Of([Sheet(0.95, true), Sheet(0.5, false), Sheet(1, false), Sheet(0.42, true), Sheet(0.05, false), Sheet(0.58, false)], 5)!;
        Assert.Equal(6, scores.Sheets);
        Assert.Equal([0.0, 0.4, 0.8], scores.Bins.Select(bin => bin.From.Fraction));
        Assert.Equal([0.2, 0.6, 1.0], scores.Bins.Select(bin => bin.To.Fraction));
        Assert.Equal([1, 3, 2], scores.Bins.Select(bin => bin.Sheets));
        Assert.Equal([0.05, 0.5, 0.975], scores.Bins.Select(bin => Math.Round(bin.MeanOdds.Fraction, 12)));
        Assert.Equal([0, 1 / 3.0, 0.5], scores.Bins.Select(bin => bin.KeptShare.Fraction));
        Assert.Equal(ShareInterval.Wilson(1, 3), scores.Bins[1].Interval);
        Assert.Equal(0.25, scores.CalibrationError, 1e-12);
    }

    [Theory]
    [InlineData(19, false)]
    [InlineData(20, true)]
    public void From_twenty_sheets_on_a_diagram_says_something(int sheets, bool telling)
        => Assert.Equal(telling, ForecastScores.Of([.. Enumerable.Repeat(Sheet(0.5, true), sheets)])!.IsTelling);

    [Fact]
    public void Without_sheets_there_is_no_score() => Assert.Null(ForecastScores.Of([]));

    [Theory]
    [InlineData(1)]
    [InlineData(51)]
    public void Absurd_numbers_of_bars_are_refused(int bars)
        => Assert.Equal(
            $"The number of bars is {bars}; it should be between 2 and 50.",
            Assert.Throws<RefusalException>(() => ForecastScores.Of([Sheet(0.5, true)], bars)).Message);

    [Fact]
    public void Shares_that_cannot_be_are_refused()
    {
        Assert.Equal("The number of sheets is 0; it should be between 1 and 2147483647.", Refused(() => ShareInterval.Wilson(0, 0)));
        Assert.Equal("The number of keepers is 4; it should be between 0 and 3.", Refused(() => ShareInterval.Wilson(4, 3)));
        Assert.Equal("The number of keepers is -1; it should be between 0 and 3.", Refused(() => ShareInterval.Wilson(-1, 3)));
        Assert.Equal("The number of sheets to look back over is 0; it should be between 1 and 100000.", Refused(() => HitRate.OverTime([true], 0)));

        static string Refused(Action action) => Assert.Throws<RefusalException>(action).Message;
    }

    private static ForecastOutcome Sheet(double odds, bool keeper) => new(Probability.FromFraction(odds), keeper);
}
