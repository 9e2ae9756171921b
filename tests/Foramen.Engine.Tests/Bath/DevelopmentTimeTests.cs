using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class DevelopmentTimeTests
{
    private static readonly DeveloperProfile Paper = DeveloperProfile.Paper;

    private static readonly Gen<Spread<double>> GenActivity = Gen.Select(Gen.Double[0.6, 1], Gen.Double[0, 1], Gen.Double[0, 1])
        .Select((middle, below, above) => new Spread<double>(middle * below, middle, middle + ((1 - middle) * above)));

    // Common practice, no source: 70 to 75 s at 20 °C.
    [Fact]
    [Source("common-practice")]
    public void A_fresh_bottle_at_twenty_degrees_takes_seventy_to_seventy_five_seconds()
    {
        var fresh = DevelopmentTime.Fresh(Paper, C(20));
        Assert.InRange(fresh.Time.Middle.Seconds, 70, 75);
        Assert.Empty(fresh.Warnings);
    }

    [Fact]
    public void Half_the_activity_takes_twice_the_time()
        => Assert.Equal(150, DevelopmentTime.For(Paper with { ActivityLimit = 0.4 }, C(20), Exactly(0.5)).Time.Middle.Seconds, 1e-9);

    [Fact]
    public void Warmer_is_shorter() => Gen.Select(GenWorkingCelsius, GenWorkingCelsius, GenActivity).Sample((a, b, activity) =>
        DevelopmentTime.For(Paper, C(Math.Min(a, b)), activity).Time.Middle >= DevelopmentTime.For(Paper, C(Math.Max(a, b)), activity).Time.Middle);

    [Fact]
    public void Weaker_is_longer() => Gen.Select(GenWorkingCelsius, Gen.Double[0.6, 1], Gen.Double[0.6, 1]).Sample((celsius, a, b) =>
        DevelopmentTime.For(Paper, C(celsius), Exactly(Math.Min(a, b))).Time.Middle
            >= DevelopmentTime.For(Paper, C(celsius), Exactly(Math.Max(a, b))).Time.Middle);

    [Fact]
    public void The_bounds_hold_the_time_between_them() => Gen.Select(GenWorkingCelsius, GenActivity).Sample((celsius, activity) =>
    {
        var answer = DevelopmentTime.For(Paper, C(celsius), activity);
        Assert.InRange(answer.Time.Middle.Seconds, answer.Time.Low.Seconds, answer.Time.High.Seconds);
        Assert.InRange(answer.Time.Middle.Seconds, answer.Minimum.Seconds, 2 * answer.Minimum.Seconds);
    });

    // Ferguson and Howard's law for both coefficients: what is strongest goes with the shorter time, what is weakest with the longer.
    [Fact]
    public void The_bounds_are_those_of_strength_and_of_the_law_together() => Gen.Select(GenWorkingCelsius, GenActivity).Sample((celsius, activity) =>
    {
        var time = DevelopmentTime.For(Paper, C(celsius), activity).Time;
        double[] factors = [.. new[] { Paper.Temperatures.Low, Paper.Temperatures.Middle, Paper.Temperatures.High }.Select(law => Math.Exp((20 - celsius) / 10 * Math.Log(law.Q10)))];
        Assert.Equal(Paper.Time.Seconds * factors.Order().First() / activity.High, time.Low.Seconds, 1e-6);
        Assert.Equal(Paper.Time.Seconds * factors.Order().Last() / Math.Max(activity.Low, Paper.ActivityLimit), time.High.Seconds, 1e-6);
        Assert.Equal(Paper.Time.Seconds * factors[1] / activity.Middle, time.Middle.Seconds, 1e-6);
    });

    [Theory]
    [InlineData(0.7, 2.1, 2.2)]
    [InlineData(0.7, 0.8, 2.1)]
    [InlineData(0.8, 0.7, 0.9)]
    [InlineData(0.7, 0.8, 0.75)]
    [InlineData(-0.1, 0.8, 0.9)]
    [InlineData(double.NaN, 0.8, 0.9)]
    [InlineData(0.7, double.NaN, 0.9)]
    [InlineData(0.7, 0.8, double.NaN)]
    public void An_activity_that_cannot_be_is_refused(double low, double middle, double high)
        => Assert.Contains("activity", Assert.Throws<RefusalException>(() => DevelopmentTime.For(Paper, C(20), new(low, middle, high))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(20, null)]
    [InlineData(18, null)]
    [InlineData(25, null)]
    [InlineData(15, "cool")]
    [InlineData(12, "hydroquinone")]
    [InlineData(27, "warm")]
    [InlineData(30, "fog")]
    public void Warns_outside_the_usual_range(double celsius, string? word)
    {
        var warnings = DevelopmentTime.Fresh(Paper, C(celsius)).Warnings;
        if (word is null)
        {
            Assert.Empty(warnings);
        }
        else
        {
            Assert.Contains(word, Assert.Single(warnings), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(68, "68 °F meant, which is 20 °C?")]
    [InlineData(75, "75 °F meant")]
    [InlineData(9, "warm it first")]
    [InlineData(40, "cool it first")]
    [InlineData(0, "warm it first")]
    public void Refuses_what_no_developer_works_at(double celsius, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => DevelopmentTime.Fresh(Paper, C(celsius))).Message, StringComparison.Ordinal);

    [Fact]
    public void Twenty_in_the_wrong_scale_is_asked_about()
        => Assert.Contains("20 °C meant", Assert.Throws<RefusalException>(() => DevelopmentTime.Fresh(Paper, F(20))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_bottle_below_its_limit_is_to_be_replaced()
        => Assert.Contains("replace", Assert.Throws<RefusalException>(() => DevelopmentTime.For(Paper, C(20), Exactly(0.59))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_bound_below_the_limit_is_said()
        => Assert.Contains("may already", Assert.Single(DevelopmentTime.For(Paper, C(20), new(0.5, 0.7, 0.9)).Warnings), StringComparison.Ordinal);

    // Clerc sec. 557: too short a development is not cured by exposure.
    [Fact]
    public void A_time_below_the_shortest_is_said()
        => Assert.Contains("more exposure", Assert.Single(DevelopmentTime.Fresh(Paper with { Time = S(50) }, C(20)).Warnings), StringComparison.Ordinal);

    [Fact]
    public void Appearance_as_forecast_shows_the_forecast_activity() => Gen.Select(GenWorkingCelsius, Gen.Double[0.6, 1]).Sample((celsius, activity) =>
    {
        var time = DevelopmentTime.For(Paper, C(celsius), Exactly(activity)).Time.Middle;
        var shown = FactorialDevelopment.ActivityShown(Paper, C(celsius), S(time.Seconds / Paper.AppearanceFactor));
        Assert.Equal(activity, shown, 1e-9);
    });

    [Fact]
    public void Nothing_appears_in_a_closed_tank()
        => Assert.Contains("closed tank", Assert.Throws<RefusalException>(() => FactorialDevelopment.Time(S(9), 8, DevelopingVessel.ClosedTank)).Message, StringComparison.Ordinal);

    [Fact]
    public void Absurd_profiles_are_refused()
    {
        Assert.Throws<RefusalException>(() => Paper with { ActivityLimit = double.NaN });
        Assert.Throws<RefusalException>(() => Paper with { CapacitySquareMetresPerLitre = new(8, 5, 4) });
        Assert.Throws<RefusalException>(() => Paper with { Time = S(0) });
        Assert.Throws<RefusalException>(() => DevelopmentTime.For(Paper, C(20), new(double.NaN, 1, 1)));
    }
}
