using CsCheck;
using Foramen.Engine.Learning;

namespace Foramen.Engine.Tests.Learning;

public class AitkenStepTests
{
    [Fact]
    public void Steps_that_shrink_by_one_part_end_where_the_third_one_leads()
        => Gen.Select(Gen.Double[0.15, 0.85], Gen.Double[-20, 20], Gen.Double[-20, 20]).Sample((part, end, start) =>
        {
            var ahead = new AitkenStep();
            var at = start;
            for (var step = 0; step < 3; step++)
            {
                at = ahead.Next(at, end + (part * (at - end)));
            }

            Assert.Equal(end, at, 1e-9 * (1 + Math.Abs(end) + Math.Abs(start)));
        });

    [Fact]
    public void Steps_that_swing_shrink_at_once_or_hardly_at_all_are_taken_as_they_are()
        => Gen.Select(Gen.OneOf(Gen.Double[-0.9, 0.05], Gen.Double[0.95, 1.2]), Gen.Double[-20, 20], Gen.Int[1, 12]).Sample((part, start, count) =>
        {
            var ahead = new AitkenStep();
            var at = start;
            for (var step = 0; step < count; step++)
            {
                Assert.Equal(part * at, ahead.Next(at, part * at));
                at *= part;
            }
        });

    /// <summary>x ← √x + ½ comes nearer to its end, 1 + √3/2, unevenly: by and by about a third of what was left.</summary>
    [Fact]
    public void Where_they_shrink_unevenly_the_end_is_the_same_and_is_reached_sooner()
    {
        var end = 1 + (Math.Sqrt(3) / 2);
        Assert.Equal(end, After(40, helped: false), 1e-12);
        Assert.Equal(end, After(9, helped: true), 1e-9);
        Assert.True(Math.Abs(end - After(9, helped: false)) > 1e-5);
    }

    private static double After(int steps, bool helped)
    {
        var (at, ahead) = (9.0, new AitkenStep());
        for (var step = 0; step < steps; step++)
        {
            var next = Math.Sqrt(at) + 0.5;
            at = helped ? ahead.Next(at, next) : next;
        }

        return at;
    }
}
