using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Tests.Kit;

public class MaskReadingTests
{
    private static readonly MaskDefinition Oval = new() { Name = "oval", Shape = "ellipse", WidthMillimetres = 60, DistanceMillimetres = 3 };

    [Fact]
    public void What_is_written_down_is_what_is_computed_with()
    {
        var mask = (Oval with { HeightOverWidth = 1.5, XMillimetres = 5, YMillimetres = -2, TurnDegrees = 30, Sense = "passes", Place = "beforeHole", DistanceMillimetres = 40 }).ToMask();
        Assert.Equal((60, 90), (mask.Width.Millimetres, Math.Round(mask.Height.Millimetres, 6)));
        Assert.Equal(SheetPoint.FromMillimetres(5, -2), mask.Middle);
        Assert.Equal(30, mask.Turn.Degrees, 1e-12);
        Assert.Equal(MaskSense.Passes, mask.Sense);
        Assert.Equal((true, 40), (mask.Place.IsBeforeHole, mask.Place.Distance.Millimetres));
    }

    [Fact]
    public void What_is_missing_is_a_circle_in_the_middle_that_blocks_in_a_tray()
    {
        var mask = Oval.ToMask();
        Assert.Equal(60, mask.Height.Millimetres, 1e-6);
        Assert.Equal((SheetPoint.FromMillimetres(0, 0), 0.0, MaskSense.Blocks), (mask.Middle, mask.Turn.Degrees, mask.Sense));
        Assert.Equal((false, 3), (mask.Place.IsBeforeHole, mask.Place.Distance.Millimetres));
        var said = (Oval with { Sense = "blocks", Place = "tray" }).ToMask();
        Assert.Equal((MaskSense.Blocks, false), (said.Sense, said.Place.IsBeforeHole));
    }

    // A rectangle of 2 by 1: 60 mm wide it is 30 mm high.
    [Fact]
    public void A_path_keeps_its_proportions()
        => Assert.Equal(30, (Oval with { Shape = "path", Path = "M0 0 H20 V10 H0 Z" }).ToMask().Height.Millimetres, 1e-6);

    [Fact]
    public void Unknown_words_and_missing_shapes_are_refused()
    {
        Refused("The mask's shape is \"star\"; it should be text, ellipse or path.", Oval with { Shape = "star" });
        Refused("What the mask does is \"burns\"; it should be blocks or passes.", Oval with { Sense = "burns" });
        Refused("The mask's place is \"shelf\"; it should be tray or beforeHole.", Oval with { Place = "shelf" });
        Assert.Throws<RefusalException>((Oval with { Shape = "text" }).ToMask);
        Assert.Throws<RefusalException>((Oval with { Shape = "path" }).ToMask);
    }

    private static void Refused(string sentence, MaskDefinition definition)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(definition.ToMask).Message);
}
