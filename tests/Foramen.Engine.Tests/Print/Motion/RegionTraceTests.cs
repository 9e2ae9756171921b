using Foramen.Engine.Exposure;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class RegionTraceTests
{
    // A soft edge is seen from 0.05, and nine tenths of all stays: assumptions told in the remarks of MotionOnPaper.
    [Theory]
    [InlineData(0.5, 0.049, MotionVerdict.Vanishes)]
    [InlineData(0.5, 0.05, MotionVerdict.Ghost)]
    [InlineData(0.5, 0.449, MotionVerdict.Ghost)]
    [InlineData(0.5, 0.45, MotionVerdict.Stays)]
    [InlineData(0.01, 0.01, MotionVerdict.Vanishes)]
    public void The_verdict_turns_at_what_can_be_seen_and_at_nine_tenths(double still, double moved, MotionVerdict verdict)
        => Assert.Equal(verdict, RegionTrace.Of(still, moved, 1).Verdict);
}
