using CsCheck;
using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

/// <summary>q = d ln T/d ln t_m, against the derivatives of the laws in closed form.</summary>
public class FailureExponentTests
{
    [Fact]
    public void A_power_law_is_like_its_own_power_at_any_time() => Gen.Select(Gen.Double[0.5, 1], Gen.Double[0.1, 4]).Sample((p, lg) =>
        Assert.Equal(1 / p, SchwarzschildFailure.FromExponent(p).ExponentNear(Math.Pow(10, lg)), 1e-9));

    [Fact]
    public void Where_nothing_fails_it_is_one() => Gen.Double[-6, -0.1].Sample(lg =>
        Assert.Equal(1, SchwarzschildFailure.Assumed.ExponentNear(Math.Pow(10, lg)), 1e-9));

    // T = m + a·m^1.62, so q = (m + 1.62·a·m^1.62)/(m + a·m^1.62).
    [Fact]
    public void The_additive_law_goes_from_one_to_its_power() => Gen.Select(Gen.Double[0, 2], Gen.Double[-2, 4]).Sample((a, lg) =>
    {
        var m = Math.Pow(10, lg);
        var failing = a * Math.Pow(m, 1.62);
        Assert.Equal((m + (1.62 * failing)) / (m + failing), AdditivePowerFailure.FromExtraAtOneSecond(a).ExponentNear(m), 2e-4);
    });

    [Fact]
    public void It_is_held_to_three_where_a_table_is_steeper()
        => Assert.Equal(3, MeasuredFailure.FromTable([(S(10), S(10)), (S(20), S(2000))]).ExponentNear(15));

    [Fact]
    public void No_time_loses_no_light() => Assert.Equal(0, SchwarzschildFailure.Assumed.Loss(S(0)).Value);

    [Fact]
    public void No_time_is_worth_no_metered_time() => Assert.Equal(0, AdditivePowerFailure.FromExtraAtOneSecond(0.1).MeteredSecondsFor(0));
}
