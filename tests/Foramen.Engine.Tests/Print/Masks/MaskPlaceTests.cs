using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public sealed class MaskPlaceTests
{
    [Fact]
    public void A_tray_lies_on_the_paper_or_up_to_nineteen_twentieths_of_the_way_to_the_hole()
    {
        var camera = Flat(0.3, 60, 100, 80);
        Assert.Equal(1, MaskPlace.InTray(Mm(0)).ScaleIn(camera));
        Assert.Equal(0, MaskPlace.InTray(Mm(0)).PenumbraIn(camera).Millimetres);
        Assert.Equal(0.05, MaskPlace.InTray(Mm(57)).ScaleIn(camera), 1e-12);
        Assert.Throws<RefusalException>(() => MaskPlace.InTray(Mm(57.1)).ScaleIn(camera));

        // Before the hole there is room.
        Assert.Equal(10, MaskPlace.BeforeHole(Mm(600)).ScaleIn(camera), 1e-12);
    }

    [Fact]
    public void Distances_beyond_ten_metres_and_masks_on_the_hole_are_refused()
    {
        Assert.False(MaskPlace.InTray(Mm(10_000)).IsBeforeHole);
        Assert.True(MaskPlace.BeforeHole(Mm(10_000)).IsBeforeHole);
        Assert.Equal(0.5, MaskPlace.BeforeHole(Mm(0.5)).Distance.Millimetres);
        Assert.Throws<RefusalException>(() => MaskPlace.InTray(Mm(10_001)));
        Assert.Throws<RefusalException>(() => MaskPlace.BeforeHole(Mm(10_001)));
        Assert.Throws<RefusalException>(() => MaskPlace.BeforeHole(Mm(0.49)));
    }

    [Fact]
    public void A_shape_is_as_wide_as_said_where_it_was_put_and_turned_to_the_left()
    {
        var mask = PrintMask.Create(MaskOutline.Ellipse(0.5), Mm(40), MaskPlace.InTray(Mm(5)), MaskSense.Passes, At(7, -3), Angle.FromDegrees(90));
        Assert.Equal((40.0, 20.0), (mask.Width.Millimetres, Math.Round(mask.Height.Millimetres, 9)));
        var places = Assert.Single(mask.OnPrint());

        // The ellipse begins at its right end, which a quarter to the left brings up, and goes on upwards, which becomes to the left.
        Assert.Equal(7, places[0].X, 1e-9);
        Assert.Equal(-3 + 20, places[0].Y, 1e-9);
        Assert.Equal(7 - 10, places[45].X, 1e-9);
        Assert.Equal(-3, places[45].Y, 1e-9);
        Assert.Equal(7 + 10, places.Max(one => one.X), 1e-9);
        Assert.Equal(-3 - 20, places.Min(one => one.Y), 1e-9);
    }

    [Theory]
    [InlineData(0.49, false)]
    [InlineData(0.5, true)]
    [InlineData(2000, true)]
    [InlineData(2001, false)]
    public void A_shape_is_half_a_millimetre_to_two_metres_wide(double width, bool isTaken)
    {
        PrintMask Made() => PrintMask.Create(MaskOutline.Ellipse(1), Mm(width), MaskPlace.InTray(Mm(5)));
        if (isTaken)
        {
            Assert.Equal(width, Made().Width.Millimetres, 1e-9);
            Assert.Equal(MaskSense.Blocks, Made().Sense);
        }
        else
        {
            Assert.Throws<RefusalException>(Made);
        }
    }
}
