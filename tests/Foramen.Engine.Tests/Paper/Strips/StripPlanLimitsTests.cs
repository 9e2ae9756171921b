using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class StripPlanLimitsTests
{
    [Theory]
    [InlineData(0.4, 1, 4, "the time of the first patch")]
    [InlineData(3601, 1, 4, "the time of the first patch")]
    [InlineData(10, 0.1, 4, "the step from patch to patch")]
    [InlineData(10, 3.1, 4, "the step from patch to patch")]
    [InlineData(10, 1, 2, "the number of patches")]
    [InlineData(10, 1, 25, "the number of patches")]
    [InlineData(3000, 3, 3, "the time of the last patch")]
    public void What_cannot_be_made_is_named(double first, double ratio, int count, string why)
        => Assert.Contains(
            why,
            Assert.Throws<RefusalException>(() => StripPlan.Create(S(first), Stops.FromValue(ratio), count, StripWay.Covering)).Message,
            StringComparison.OrdinalIgnoreCase);

    // Two seconds are just kept by hand; a machine keeps half a second.
    [Fact]
    public void The_shortest_stretch_is_what_can_be_kept()
    {
        Assert.Equal(2, StripPlan.Create(S(2), Stops.FromValue(1), 4, StripWay.Covering).Moves[0].Light.Seconds);
        Assert.Equal(0.5, StripPlan.Create(S(0.5), Stops.FromValue(1), 4, StripWay.Covering, S(0.5)).Moves[0].Light.Seconds);
        Assert.Throws<RefusalException>(() => StripPlan.Create(S(8), Stops.FromValue(1), 4, StripWay.Covering, S(9)));
    }

    // Independent edges of 0.15 s: one opening has two of them, four openings eight; under steady light every patch has two.
    [Theory]
    [InlineData(StripWay.HoleAsShutter, new[] { 0.212132, 0.3, 0.367423, 0.424264 })]
    [InlineData(StripWay.Covering, new[] { 0.212132, 0.212132, 0.212132, 0.212132 })]
    [InlineData(StripWay.Uncovering, new[] { 0.212132, 0.212132, 0.212132, 0.212132 })]
    public void Every_opening_of_the_hole_adds_two_uncertain_edges(StripWay way, double[] spreads)
    {
        var plan = StripPlan.Create(S(8), Stops.FromValue(1), 4, way);
        Assert.Equal([1, 2, 3, 4], plan.Steps.Select(step => step.Number));
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(spreads[i], plan.Steps[i].TimingSpread.Seconds, 1e-6);
        }
    }
}
