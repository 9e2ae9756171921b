using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class FlashStripTests
{
    private static readonly Duration[] Times = [S(1), S(2), S(4), S(8), S(16)];

    [Fact]
    public void The_threshold_is_the_geometric_mean_of_the_last_unseen_and_the_first_seen()
    {
        var read = FlashStrip.Read(Times, 4, Lamp(0.1), LightColour.Lamp);
        Assert.Equal(Math.Sqrt(32), read.Threshold.Seconds, 1e-9);
        Assert.Equal(1 / Math.Sqrt(12), read.Spread.Value, 1e-9);
    }

    [Theory]
    [InlineData(1, "Even the shortest")]
    [InlineData(6, "Not even the longest")]
    public void A_threshold_beyond_the_strip_is_refused(int first, string why)
        => Assert.Contains(why, Assert.Throws<RefusalException>(() => FlashStrip.Read(Times, first, Lamp(0.1), LightColour.Lamp)).Message, StringComparison.Ordinal);

    // Worked apart from this code for this curve: φ 0.5 gains 0.792 stop and fogs by 0.008; φ 0.8, 1.256 and 0.024; φ 1, 1.532 and 0.040.
    [Theory]
    [InlineData(0.5, 0.792, 0.008)]
    [InlineData(0.8, 1.256, 0.024)]
    [InlineData(1.0, 1.532, 0.040)]
    public void What_a_flash_gives_and_takes(double fraction, double gain, double cost)
    {
        var trade = FlashTrade.Of(Negative, fraction);
        Assert.Equal(gain, trade.Effect.VisibleGain.Value, 0.002);
        Assert.Equal(cost, trade.BaseChange, 0.0006);
    }

    [Fact]
    public void More_flash_gives_more_faint_tones_and_takes_more_black() => Gen.Select(Gen.Double[0, 1.4], Gen.Double[0.01, 0.1], Gen.Bool).Sample(
        (fraction, more, negative) =>
        {
            CharacteristicCurve curve = negative ? Negative : Positive;
            var (weak, strong) = (FlashTrade.Of(curve, fraction), FlashTrade.Of(curve, fraction + more));
            Assert.True(strong.Effect.VisibleGain > weak.Effect.VisibleGain);
            Assert.True(strong.BaseChange > weak.BaseChange);
        });

    [Fact]
    public void The_flash_that_is_advised_stays_half_unseen()
    {
        var trade = FlashTrade.Of(Negative, FlashAdvice.FractionFor(Negative));
        Assert.Equal(0.02, trade.BaseChange, 1e-6);

        // 0.5^(1/n) with n = k/ln 10 = 2.404 for the toe of this curve.
        Assert.Equal(0.750, trade.Effect.Fraction, 0.006);
    }

    [Fact]
    public void Half_the_light_needs_more_than_twice_the_flash()
    {
        var response = PaperResponse.Of(Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 4, 0.5, 11)).ToPaper("box"), LightColour.Lamp);
        var threshold = FlashEffect.Threshold(response.Paper.Curve);
        var (sun, shade) = (FlashAdvice.For(response, Lamp(0.04), threshold), FlashAdvice.For(response, Lamp(0.02), threshold));
        Assert.Equal(Math.Pow(2, 1 / 0.9), shade.Time.Seconds / sun.Time.Seconds, 0.01);
    }
}
