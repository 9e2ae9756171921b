using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>p = lg(I₁/I₂)/lg(t₂/t₁) at equal density (Schwarzschild 1900): light 8 times less, 30 s and 346.4 s, is p 0.850, worked by hand.</summary>
public class StripFailureTests
{
    [Fact]
    public void One_strip_leaves_the_exponent_assumed()
    {
        var failure = Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 4, 0.5, 11, exponent: 0.8)).Failure;
        Assert.True(failure.IsAssumed);
        Assert.Null(failure.Exponent);
        Assert.Equal(SchwarzschildFailure.Assumed, failure.Law);
    }

    [Theory]
    [InlineData(0.85)]
    [InlineData(0.95)]
    public void Two_lights_find_it(double exponent)
    {
        var bright = Of(Negative, 0.8, 2, 0.5, 9, exponent, lightSpread: 0.05);
        var dim = Of(Negative, 0.8 / 32, 2 * Math.Pow(32, 1 / exponent), 0.5, 9, exponent, lightSpread: 0.05);
        var failure = Fit(PaperKind.NegativeWorking, bright, dim).Failure;
        Assert.False(failure.IsAssumed);
        Assert.Equal(exponent, failure.Exponent!.Value, 0.012);
        Assert.InRange(failure.SpreadPerDoubling, 0.005, 0.03);
    }

    [Fact]
    public void The_more_the_lights_differ_the_less_doubt_is_left() => Gen.Select(Gen.Double[2.5, 4], Gen.Double[1, 2.5]).Sample(
        (stops, more) => Spread(stops + more) < Spread(stops),
        iter: Samples.Of(20));

    [Fact]
    public void The_second_strip_that_is_advised_is_dimmer_and_longer_and_leaves_less_doubt()
    {
        var first = Of(Negative, 0.4, 2, 0.5, 9);
        var advice = StripAdvice.Next([first], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, StripGoal.Failure);
        Assert.InRange(advice.Dimmer.Value, 3, 6);
        Assert.True(advice.SpreadAfter < 0.7 * advice.SpreadNow);

        // The mid-tone of 2 lx s must lie on it.
        var seconds = Math.Pow(2 / (0.4 * Math.Pow(2, -advice.Dimmer.Value)), 1 / 0.9);
        Assert.InRange(seconds, advice.Plan.Steps[0].Total.Seconds, advice.Plan.Longest.Seconds);
    }

    [Fact]
    public void After_a_strip_that_was_too_dark_more_light_is_advised()
    {
        var advice = StripAdvice.Next([Of(Negative, 0.02, 2, 0.5, 6)], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, StripGoal.Curve);

        // Its longest patch got 0.26 lx s, the paper's mid-tone needs 2: at 0.02 lx that is 167 s.
        Assert.InRange(167, advice.Plan.Steps[0].Total.Seconds, advice.Plan.Longest.Seconds);
        Assert.True(advice.SpreadAfter < advice.SpreadNow);
    }

    private static double Spread(double stops)
    {
        var factor = Math.Pow(2, stops);
        var bright = Of(Negative, 0.8, 2, 0.5, 9, lightSpread: 0.05);
        var dim = Of(Negative, 0.8 / factor, 2 * Math.Pow(factor, 1 / 0.9), 0.5, 9, lightSpread: 0.05);
        return Fit(PaperKind.NegativeWorking, bright, dim).Failure.SpreadPerDoubling;
    }
}
