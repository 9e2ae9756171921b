using Foramen.Engine.Learning;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Learning;

public class BearingTests
{
    // Per ten sheets: five sheets of the first stretch are 0.5, and so on. Where a stretch has not begun it does not bear at all.
    [Theory]
    [InlineData(0, new double[0])]
    [InlineData(3, new[] { 0.3 })]
    [InlineData(5, new[] { 0.5 })]
    [InlineData(8, new[] { 0.5, 0.3 })]
    [InlineData(10, new[] { 0.5, 0.5 })]
    [InlineData(14, new[] { 0.5, 0.5, 0.4 })]
    public void Sheets_in_the_bottle_bear_by_the_stretches_of_its_life(double sheets, double[] loads)
    {
        var bearing = Bearing.OnSheet(new SheetConditions { Box = "box", SheetsInBottle = sheets }, 0);
        Assert.Equal(loads, bearing.Where(pair => pair.Key.Kind == BeliefKind.Ageing).Select(pair => Math.Round(pair.Load, 12)));
    }

    [Fact]
    public void Only_what_was_used_bears_on_a_sheet()
    {
        (BeliefKey, double)[] paper = [(new(BeliefKind.Speed, "box"), 1), (new(BeliefKind.Failure, "box"), 2.5)];
        var bare = new SheetConditions { Box = "box", Metered = false };
        Assert.Equal(paper, Bearing.OnSheet(bare, 2.5));
        Assert.Equal([.. paper, (new(BeliefKind.Camera, "tin"), 1)], Bearing.OnSheet(bare with { Camera = "tin" }, 2.5));
        Assert.Equal([.. paper, (new(BeliefKind.Meter, ""), 1)], Bearing.OnSheet(new SheetConditions { Box = "box" }, 2.5));
        Assert.Equal([.. paper, (new(BeliefKind.Light, "noon"), 1)], Bearing.OnSheet(bare with { Sky = "noon" }, 2.5));
    }

    [Fact]
    public void The_ends_of_the_scale_belong_to_their_box()
    {
        Assert.Equal(new BeliefKey(BeliefKind.ShadowEnd, "box"), Bearing.OnTone("box", Rendering.OpenShadow));
        Assert.Equal(new BeliefKey(BeliefKind.HighlightEnd, "box"), Bearing.OnTone("box", Rendering.TexturedHighlight));
        Assert.Null(Bearing.OnTone("box", Rendering.Mid));
    }
}
