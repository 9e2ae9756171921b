using Foramen.Engine.Exposure;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class DifferenceTraceTests
{
    // A density of a tenth of the light: darker or lighter than what is behind, both can be seen.
    [Fact]
    public void Differences_count_whichever_way_they_go()
    {
        var trace = new DifferenceTrace(light => light / 10);
        trace.Add(10, 20, 15);
        trace.Add(20, 5, 19);
        Assert.Equal((1 + 1.5) / 2, trace.Result().Still, 1e-9);
        Assert.Equal((0.5 + 0.1) / 2, trace.Result().Moved, 1e-9);
        Assert.Equal((1.5 + 1.9) / 2, trace.Result().Density.Value, 1e-9);
        Assert.Equal(MotionVerdict.Ghost, trace.Result().Verdict);
    }

    [Fact]
    public void A_place_that_is_not_known_does_not_count()
    {
        var trace = new DifferenceTrace(light => light / 10);
        trace.Add(double.NaN, 1, 1);
        trace.Add(1, double.NaN, 1);
        trace.Add(1, 1, double.NaN);
        Assert.Equal(RegionTrace.Of(0, 0, 0), trace.Result());
        trace.Add(10, 20, 20);
        Assert.Equal(1, trace.Result().Still, 1e-9);
        Assert.Equal(2, trace.Result().Density.Value, 1e-9);
    }
}
