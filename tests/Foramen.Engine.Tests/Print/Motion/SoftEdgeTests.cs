using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class SoftEdgeTests
{
    [Fact]
    public void A_fiftieth_of_the_region_leads_from_nothing_to_all_on_every_side() => Gen.Select(Gen.Double[0, 0.02], Gen.Double[0.03, 0.97]).Sample((near, along) =>
    {
        Assert.Equal(near * 50, SoftEdge.Part(near, along), 1e-9);
        Assert.Equal(near * 50, SoftEdge.Part(1 - near, along), 1e-9);
        Assert.Equal(near * 50, SoftEdge.Part(along, near), 1e-9);
        Assert.Equal(near * 50, SoftEdge.Part(along, 1 - near), 1e-9);
        Assert.Equal(1, SoftEdge.Part(along, along));
    });

    [Fact]
    public void Samples_lie_evenly_about_the_middle()
    {
        Assert.Equal(0.5, SoftEdge.Samples((u, _) => (float)u).Average(), 1e-6);
        Assert.Equal(0.5, SoftEdge.Samples((_, v) => (float)v).Average(), 1e-6);

        // n steps across have the mean square (1 − 1/n²)/12 of what is even.
        var n = Math.Sqrt(SoftEdge.Samples((_, _) => 1).Length);
        Assert.Equal((1 - (1 / (n * n))) / 12, SoftEdge.Samples((_, v) => (float)Math.Pow(v - 0.5, 2)).Average(), 1e-6);
    }
}
