using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class StripPlanTests
{
    private static readonly Gen<StripPlan> GenPlan =
        from first in Gen.Double[4, 20]
        from ratio in Gen.Double[0.6, 1.5]
        from count in Gen.Int[3, 8]
        from way in Gen.Enum<StripWay>()
        select StripPlan.Create(S(first), Stops.FromValue(ratio), count, way);

    // Worked by hand: 30·2^(i/2), and the differences.
    [Fact]
    public void Half_stops_from_thirty_seconds()
    {
        var plan = StripPlan.Create(S(30), Stops.FromValue(0.5), 6, StripWay.HoleAsShutter);
        double[] totals = [30, 42.4, 60, 84.9, 120, 169.7];
        double[] openings = [30, 12.4, 17.6, 24.9, 35.1, 49.7];
        for (var i = 0; i < 6; i++)
        {
            Assert.Equal(totals[i], plan.Steps[i].Total.Seconds, 0.06);
            Assert.Equal(openings[i], plan.Moves[i].Light.Seconds, 0.06);
        }

        Assert.Equal([1, 2, 3, 4, 5, null], plan.Moves.Select(move => move.CardPatch));
    }

    [Fact]
    public void Uncovering_begins_with_the_patch_that_gets_most()
    {
        var plan = StripPlan.Create(S(10), Stops.FromValue(1), 4, StripWay.Uncovering);
        Assert.Equal([40, 20, 10, 10], plan.Moves.Select(move => move.Light.Seconds));
        Assert.Equal([3, 2, 1, null], plan.Moves.Select(move => move.CardPatch));
    }

    // The moves are played through with a card, and each patch's light is counted.
    [Fact]
    public void Whatever_the_way_each_patch_gets_its_time() => GenPlan.Sample(plan =>
    {
        var count = plan.Steps.Count;
        var covered = Enumerable.Range(1, count).Select(patch => plan.Way == StripWay.Uncovering && patch < count).ToArray();
        var light = new double[count];
        foreach (var move in plan.Moves)
        {
            for (var i = 0; i < count; i++)
            {
                light[i] += covered[i] ? 0 : move.Light.Seconds;
            }

            if (move.CardPatch is { } patch)
            {
                covered[patch - 1] = plan.Way != StripWay.Uncovering;
            }
        }

        for (var i = 0; i < count; i++)
        {
            Assert.Equal(plan.Steps[i].Total.Seconds, light[i], 1e-9 * light[i]);
        }
    });

    [Fact]
    public void A_stretch_that_no_hand_can_keep_is_refused_with_what_would_do()
    {
        var refusal = Assert.Throws<RefusalException>(() => StripPlan.Create(S(2), Stops.FromValue(1.0 / 3), 8, StripWay.Covering));
        Assert.Contains("0.52 s", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("3.8 times longer", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN, 0.5, 6)]
    [InlineData(10, 0, 6)]
    [InlineData(10, 0.5, 1)]
    [InlineData(3000, 3, 12)]
    public void Absurd_plans_are_refused(double first, double ratio, int count)
        => Assert.Throws<RefusalException>(() => StripPlan.Create(S(first), Stops.FromValue(ratio), count, StripWay.Covering));
}
