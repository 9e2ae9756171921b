using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Exposure;

public class ShouldWaitTests
{
    // A rate with a gamma posterior averaged out of exp(−λT) gives Lomax's tail (β/(β+T))^α; Bayesian textbooks. Prior one span of 5 min; seen two
    // finished suns of 4 and 6 min and 3 min of this one: α 3, β 18; T 2 min: (18/20)³ = 0.729.
    [Fact]
    public void The_sun_of_now_by_lomax()
    {
        var odds = ShouldWait.Odds(new LightSoFar([Minutes(4), Minutes(6)], [Minutes(5)], true, Minutes(3)), Minutes(2), Minutes(0));
        Assert.Equal(0.729, odds.UnbrokenNow.Fraction, 1e-9);
        Assert.Equal(360, odds.MeanSun.Seconds, 1e-9);
        Assert.Equal(300, odds.MeanCloud.Seconds, 1e-9);
    }

    // Memoryless: with rates known, the sun lasts with exp(−aT), and gathering with no slack is the same.
    [Fact]
    public void Without_a_wait_only_the_sun_of_now_counts() => Gen.Select(Gen.Double[0.02, 2], Gen.Double[0.02, 2], Gen.Double[0.1, 30]).Sample((a, b, need) =>
    {
        Assert.Equal(Math.Exp(-a * need), ShouldWait.Unbroken(a, b, need, 0, true), 1e-9);
        Assert.Equal(0, ShouldWait.Unbroken(a, b, need, 0, false));
        Assert.Equal(Math.Exp(-a * need), ShouldWait.Gathered(a, b, need, need, true), 1e-9);
    });

    // Another road: a hundred thousand days drawn with a fixed seed. Four standard errors of a half are 0.0063; the grid of time may add as much.
    [Theory]
    [InlineData(0.2, 0.2, 3, 20, true)]
    [InlineData(0.2, 0.2, 3, 20, false)]
    [InlineData(0.5, 0.1, 4, 60, true)]
    [InlineData(0.1, 0.5, 10, 15, false)]
    [InlineData(1, 1, 2, 5, true)]
    public void It_agrees_with_days_drawn_by_lot(double a, double b, double need, double wait, bool sunNow)
    {
        var random = new Random(20240620);
        double Draw(double rate) => -Math.Log(1 - random.NextDouble()) / rate;
        const int Days = 100_000;
        var (unbroken, gathered) = (0, 0);
        for (var day = 0; day < Days; day++)
        {
            var (time, sun, sum, met, done) = (0.0, sunNow, 0.0, false, false);
            while (time <= wait + need)
            {
                var length = Draw(sun ? a : b);
                if (sun)
                {
                    met |= time <= wait && length >= need;
                    done |= sum < need && sum + length >= need && time + (need - sum) <= wait + need;
                    sum += length;
                }

                time += length;
                sun = !sun;
            }

            unbroken += met ? 1 : 0;
            gathered += done ? 1 : 0;
        }

        Assert.Equal((double)unbroken / Days, ShouldWait.Unbroken(a, b, need, wait, sunNow), 0.012);
        Assert.Equal((double)gathered / Days, ShouldWait.Gathered(a, b, need, wait + need, sunNow), 0.0065);
    }

    [Fact]
    public void More_patience_never_lessens_the_odds_and_a_longer_exposure_never_raises_them()
        => Gen.Select(Gen.Double[0.5, 20].List[0, 4], Gen.Double[0.5, 20].List[0, 4], Gen.Bool, Gen.Double[0.5, 20], Gen.Double[1, 60]).Sample(
            (suns, clouds, sunNow, need, wait) =>
            {
                var soFar = new LightSoFar([.. suns.Select(Minutes)], [.. clouds.Select(Minutes)], sunNow, Minutes(1));
                var some = ShouldWait.Odds(soFar, Minutes(need), Minutes(wait));
                var more = ShouldWait.Odds(soFar, Minutes(need), Minutes(wait * 1.5));
                var longer = ShouldWait.Odds(soFar, Minutes(need * 1.5), Minutes(wait));
                Assert.True(more.UnbrokenByWaiting.Fraction >= some.UnbrokenByWaiting.Fraction - 0.01);
                Assert.True(more.GatheredByWaiting.Fraction >= some.GatheredByWaiting.Fraction - 1e-9);
                Assert.True(longer.UnbrokenByWaiting.Fraction <= some.UnbrokenByWaiting.Fraction + 0.01);
                Assert.True(some.UnbrokenByWaiting >= some.UnbrokenNow);
                Assert.True(some.GatheredByWaiting.Fraction >= some.UnbrokenByWaiting.Fraction - 0.02);
            },
            iter: Samples.Of(15));

    [Theory]
    [InlineData(0, 10)]
    [InlineData(5, 300)]
    public void Absurd_waits_are_refused(double need, double wait)
        => Assert.Throws<RefusalException>(() => ShouldWait.Odds(new LightSoFar([], [], true, Minutes(1)), Minutes(need), Minutes(wait)));

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);
}
