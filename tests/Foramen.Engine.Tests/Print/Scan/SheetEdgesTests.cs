using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class SheetEdgesTests
{
    private static readonly (double X, double Y)[] Sheet = [(60.3, 50.6), (245.8, 40.2), (251.4, 180.9), (50.7, 170.1)];

    // Coarse corners off by up to four pixels each lead to the same corners.
    [Fact]
    public void Coarse_corners_lead_to_the_true_ones() => Gen.Double[-4, 4].Array[8].Sample(off =>
    {
        Near(Sheet, SheetEdges.Refine(Usual, [.. Sheet.Select((one, i) => new PixelPlace(one.X + off[2 * i], one.Y + off[(2 * i) + 1]))], 8), 0.2);
    }, iter: Samples.Of(40));

    private static readonly ScanImage Usual = ScanPictures.DrawSheet(300, 220, Sheet, (_, _) => 0.3, (x, y) => (int)(x + y) / 12 % 2 == 0 ? 0.8 : 0.75);

    // Things over the edges: a finger's breadth on each side of another tone, less than half of it.
    [Fact]
    public void What_lies_over_a_part_of_an_edge_does_not_move_it()
    {
        var scan = ScanPictures.DrawSheet(300, 220, Sheet, (x, _) => x is > 120 and < 150 ? 0.8 : 0.3, (_, y) => y is > 90 and < 110 ? 0.3 : 0.8);
        Near(Sheet, SheetEdges.Refine(scan, [.. Sheet.Select(one => new PixelPlace(one.X, one.Y))], 8), 0.25);
    }

    // Nothing to be seen: what was known before is kept.
    [Fact]
    public void Without_an_edge_the_coarse_corners_stay()
        => Near(Sheet, SheetEdges.Refine(ScanPictures.Draw(300, 220, (_, _) => 0.5), [.. Sheet.Select(one => new PixelPlace(one.X, one.Y))], 8), 1e-9);

    // A side out of the picture keeps its coarse line, the other three are found; its corners are held at the border.
    [Fact]
    public void A_side_beyond_the_border_keeps_its_line()
    {
        (double X, double Y)[] sheet = [(60, 50), (298, 50), (298, 170), (60, 170)];
        var scan = ScanPictures.DrawSheet(300, 220, sheet, (_, _) => 0.3, (_, _) => 0.8);
        var found = SheetEdges.Refine(scan, [new(61, 52), new(303, 49), new(303, 171), new(62, 168)], 8);
        Near([(60, 50), (300, 50), (300, 170), (60, 170)], found, 0.2);
    }

    // A step of less than a twenty-fifth is none.
    [Theory]
    [InlineData(0.5, 0.6, true)]
    [InlineData(0.5, 0.512, false)]
    public void A_faint_edge_is_no_edge(double ground, double rim, bool isSeen)
    {
        var scan = ScanPictures.DrawSheet(300, 220, Sheet, (_, _) => ground, (_, _) => rim);
        PixelPlace[] coarse = [.. Sheet.Select(one => new PixelPlace(one.X + 3, one.Y + 3))];
        Near(isSeen ? Sheet : [.. coarse.Select(one => (one.X, one.Y))], SheetEdges.Refine(scan, coarse, 8), isSeen ? 0.3 : 1e-9);
    }

    // The picture begins within the rim: its step is larger than the rim's against the ground, but the outermost of the large ones is the edge.
    [Fact]
    public void The_edge_of_the_rim_counts_and_not_that_of_the_picture()
    {
        (double X, double Y)[] sheet = [(50, 40), (250, 40), (250, 180), (50, 180)];
        var scan = ScanPictures.DrawSheet(300, 220, sheet, (_, _) => 0.3, (x, y) => x is > 55 and < 245 && y is > 45 and < 175 ? 0.02 : 0.75);
        Near(sheet, SheetEdges.Refine(scan, [.. sheet.Select(one => new PixelPlace(one.X + 1, one.Y - 1))], 9), 0.25);
    }

    [Fact]
    public void Sides_that_run_alike_have_no_corner()
        => Assert.Contains(
            "run alike",
            Assert.Throws<RefusalException>(() => SheetEdges.Refine(
                ScanPictures.Draw(300, 220, (_, _) => 0.5), [new(50, 50), new(150, 50), new(250, 50), new(150, 150)], 8)).Message,
            StringComparison.Ordinal);

    private static void Near((double X, double Y)[] corners, PrintCorners found, double pixels)
    {
        PixelPoint[] all = [found.TopLeft, found.TopRight, found.BottomRight, found.BottomLeft];
        for (var i = 0; i < 4; i++)
        {
            Assert.InRange(double.Hypot(all[i].X - corners[i].X, all[i].Y - corners[i].Y), 0, pixels);
        }
    }
}
