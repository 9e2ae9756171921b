using Foramen.Engine.Exposure;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class DetailTraceTests
{
    // Two tones in equal parts lie twice their root mean square apart.
    [Fact]
    public void Two_tones_are_told_by_what_lies_between_them()
    {
        var trace = new DetailTrace();
        trace.Add([1, 2, 1, 2], [1.25, 1.75, 1.25, 1.75], 3);
        Assert.Equal(1, trace.Result().Still, 1e-9);
        Assert.Equal(0.5, trace.Result().Moved, 1e-9);
        Assert.Equal(1.5, trace.Result().Density.Value, 1e-9);
        Assert.Equal(MotionVerdict.Ghost, trace.Result().Verdict);
    }

    // Squares add by their weights: √((3·2² + 1·0²)/4) and √((3·0² + 1·2²)/4).
    [Fact]
    public void Lines_count_by_their_weights()
    {
        var trace = new DetailTrace();
        trace.Add([0, 2], [1, 1], 3);
        trace.Add([2, 2], [1, 3], 1);
        Assert.Equal(Math.Sqrt(3), trace.Result().Still, 1e-9);
        Assert.Equal(1, trace.Result().Moved, 1e-9);
        Assert.Equal(1.25, trace.Result().Density.Value, 1e-9);
    }

    [Fact]
    public void A_line_that_is_not_known_does_not_count()
    {
        var trace = new DetailTrace();
        trace.Add([0, double.NaN], [0, 1], 5);
        trace.Add([0, 1], [0, double.NaN], 5);
        Assert.Equal(RegionTrace.Of(0, 0, 0), trace.Result());
        trace.Add([0, 1], [0, 1], 2);
        Assert.Equal(1, trace.Result().Still, 1e-9);
        Assert.Equal(MotionVerdict.Stays, trace.Result().Verdict);
    }
}
