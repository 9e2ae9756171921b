using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public sealed class MaskTemplateTests
{
    private static readonly Gen<(PinholeCamera Camera, MaskPlace Place, PaperKind Paper)> AnyUse = Gen.Select(Gen.Double[-8, 8], Gen.Double[-8, 8], Gen.Double[0.1, 0.8], Gen.Bool, Gen.Bool)
        .Select((x, y, part, before, direct) => (
            Flat(0.35, 60, 127, 102, 0, x, y),
            before ? MaskPlace.BeforeHole(Mm(part * 60)) : MaskPlace.InTray(Mm(part * 60)),
            direct ? PaperKind.DirectPositive : PaperKind.NegativeWorking));

    // A shape as large as the sheet is cut as large as the sheet is seen from the hole: it touches the frame on all sides, wherever the hole is, and all of it is on the page.
    [Fact]
    public void A_shape_as_large_as_the_sheet_touches_the_frame_on_all_sides() => AnyUse.Sample(use =>
    {
        var (camera, place, paper) = use;
        var template = MaskTemplate.Of(PrintMask.Create(MaskOutline.Ellipse(102.0 / 127), Mm(127), place), camera, paper);
        var lines = template.Parts.OfType<TemplateLine>().ToList();
        Assert.Equal(4, lines.Count);
        var (shape, frame) = (Bounds(lines[0].Places), Bounds(lines[1].Places));
        Assert.Equal(frame.Left, shape.Left, 0.02);
        Assert.Equal(frame.Right, shape.Right, 0.02);
        Assert.Equal(frame.Top, shape.Top, 0.02);
        Assert.Equal(frame.Bottom, shape.Bottom, 0.02);
        Assert.Equal(127 * place.ScaleIn(camera), frame.Right - frame.Left, 1e-9);
        Assert.Equal(102 * place.ScaleIn(camera), frame.Bottom - frame.Top, 1e-9);

        // In the middle of the page, 8 mm below the text.
        Assert.Equal(105, (frame.Left + frame.Right) / 2, 0.02);
        Assert.Equal(50, Math.Min(frame.Top, shape.Top), 1e-9);
        Assert.Equal(lines[0].Places[0], lines[0].Places[^1]);
        Assert.Equal(lines[1].Places[0], lines[1].Places[^1]);
    });

    // The cross is where the hole's axis is: the frame lies about it as the sheet lies about the foot of the hole, which in a tray is seen from the hole and turned over.
    [Theory]
    [InlineData(false, 1, -1)]
    [InlineData(true, -1, 1)]
    public void The_cross_is_on_the_holes_axis(bool beforeHole, int right, int up)
    {
        var camera = Flat(0.35, 60, 100, 80, 0, 6, 4);
        var template = MaskTemplate.Of(
            PrintMask.Create(MaskOutline.Ellipse(1), Mm(20), beforeHole ? MaskPlace.BeforeHole(Mm(30)) : MaskPlace.InTray(Mm(30))), camera, PaperKind.NegativeWorking);
        var lines = template.Parts.OfType<TemplateLine>().ToList();
        var (frame, across, down) = (Bounds(lines[1].Places), Bounds(lines[2].Places), Bounds(lines[3].Places));
        Assert.Equal((8, 0), (across.Right - across.Left, across.Bottom - across.Top));
        Assert.Equal((0, 8), (down.Right - down.Left, down.Bottom - down.Top));
        var (x, y) = ((across.Left + across.Right) / 2, (across.Top + across.Bottom) / 2);
        Assert.Equal((x, y), ((down.Left + down.Right) / 2, (down.Top + down.Bottom) / 2));

        // Half size: the sheet's middle is 3 to the left of the axis and 2 below it, before it is turned; the page counts downwards.
        Assert.Equal(x - (3 * right), (frame.Left + frame.Right) / 2, 1e-9);
        Assert.Equal(y + (2 * up), (frame.Top + frame.Bottom) / 2, 1e-9);
    }

    [Fact]
    public void Strokes_are_outlined_one_by_one_and_filled_together()
    {
        var template = MaskTemplate.Of(PrintMask.Create(MaskOutline.Text("HI"), Mm(40), MaskPlace.InTray(Mm(20))), Flat(0.35, 60, 100, 80), PaperKind.DirectPositive);

        // Three strokes and one; the frame and the cross.
        Assert.Equal(4 + 3, template.Parts.OfType<TemplateLine>().Count());
        var fill = template.Parts.OfType<TemplateFill>().First();
        Assert.Equal(4, fill.Rings.Count);
        Assert.Equal(template.Parts.OfType<TemplateLine>().First().Places.SkipLast(1), fill.Rings[0]);
        Assert.Contains("direct positive", template.Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, MaskSense.Blocks, false, "in the tray 20 mm before the paper|this side to the hole|Top of the page is the top of the box|stick it on clear film")]
    [InlineData(true, MaskSense.Passes, true, "20 mm before the hole|this side to the subject|as it stands level|the card around it")]
    public void The_page_says_what_to_do(bool beforeHole, MaskSense sense, bool onItsSide, string says)
    {
        var mask = PrintMask.Create(MaskOutline.Ellipse(0.5), Mm(40), beforeHole ? MaskPlace.BeforeHole(Mm(20)) : MaskPlace.InTray(Mm(20)), sense);
        var template = MaskTemplate.Of(mask, Flat(0.3, 60, 100, 80), PaperKind.NegativeWorking, onItsSide);
        var text = string.Join('\n', template.Parts.OfType<TemplateText>().Select(one => one.Text));
        Assert.All(says.Split('|'), part => Assert.Contains(part, text, StringComparison.Ordinal));

        // 0.3 · 20/40 in the tray, 0.3 · 80/20 before the hole.
        Assert.Contains(beforeHole ? "40 × 20 mm, edges soft over 1.20 mm" : "40 × 20 mm, edges soft over 0.15 mm", text, StringComparison.Ordinal);
        Assert.Contains("negative", template.Title, StringComparison.Ordinal);
    }

    // 186 mm of room across: a sheet of 200 mm is seen as 200 · (60 − z)/60, so 186 from z = 4.2 on.
    [Fact]
    public void What_does_not_fit_on_a_page_is_refused()
    {
        var camera = Flat(0.35, 60, 200, 80);
        PrintMask In(double tray) => PrintMask.Create(MaskOutline.Ellipse(1), Mm(20), MaskPlace.InTray(Mm(tray)));
        Assert.Contains("make it smaller", Assert.Throws<RefusalException>(() => MaskTemplate.Of(In(4.1), camera, PaperKind.NegativeWorking)).Message, StringComparison.Ordinal);
        Assert.NotNull(MaskTemplate.Of(In(4.3), camera, PaperKind.NegativeWorking));

        // 225 mm of room down, and 8 for the margin above: 217 of 250 from z = 7.92 on.
        var high = Flat(0.35, 60, 80, 250);
        Assert.Contains("make it smaller", Assert.Throws<RefusalException>(() => MaskTemplate.Of(In(7.8), high, PaperKind.NegativeWorking)).Message, StringComparison.Ordinal);
        Assert.NotNull(MaskTemplate.Of(In(8), high, PaperKind.NegativeWorking));
    }

    private static (double Left, double Right, double Top, double Bottom) Bounds(IReadOnlyList<(double X, double Y)> places)
        => (places.Min(one => one.X), places.Max(one => one.X), places.Min(one => one.Y), places.Max(one => one.Y));
}
