using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>Strips drawn in perspective, with uneven light, dust and flare that are known; codes in proportion to light.</summary>
public class StripScanTests
{
    private static readonly double[] Densities = [0.08, 0.15, 0.31, 0.56, 0.92, 1.25];
    private static readonly PixelPoint[] Corners = RenderedStrip.Corners;

    // The unit square's corners go to the marks, and its middle to the crossing of the diagonals (projective geometry).
    [Fact]
    public void Corners_and_diagonals_stay_what_they_are()
    {
        var map = Through(Corners);
        Assert.Equal((600.0, 30.0), (Math.Round(map.Map(1, 0).X, 6), Math.Round(map.Map(1, 0).Y, 6)));
        var (x, y) = map.Map(0.5, 0.5);
        Assert.Equal(0, ((610 - 40) * (y - 60)) - ((270 - 60) * (x - 40)), 1e-6);
        Assert.Equal(0, ((30 - 600) * (y - 30)) - ((240 - 30) * (x - 600)), 1e-6);
    }

    [Fact]
    public void Straight_lines_stay_straight() => Gen.Double[0, 1].Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((v, a, b) =>
    {
        var map = Through(Corners);
        var (p, q, r) = (map.Map(0, v), map.Map(a, v), map.Map(b, v));
        Assert.Equal(0, ((q.X - p.X) * (r.Y - p.Y)) - ((q.Y - p.Y) * (r.X - p.X)), 1e-6);
    });

    [Fact]
    public void A_pixel_leads_back_to_its_place() => Gen.Double[-0.04, 1.04].Select(Gen.Double[-0.1, 1.1]).Sample((u, v) =>
    {
        var map = Through(Corners);
        var (x, y) = map.Map(u, v);
        var (backU, backV) = map.PlaceOf(PixelPoint.At(x, y));
        Assert.Equal(u, backU, 1e-9);
        Assert.Equal(v, backV, 1e-9);
    });

    // The upper side falls 100 in 400 pixels and the lower rises as much: they meet at x = 700, and beyond it there is no plane.
    [Fact]
    public void A_pixel_beyond_the_horizon_is_refused()
    {
        var narrowing = Through([PixelPoint.At(100, 400), PixelPoint.At(500, 500), PixelPoint.At(500, 600), PixelPoint.At(100, 700)]);
        Assert.Contains("horizon", Assert.Throws<RefusalException>(() => narrowing.PlaceOf(PixelPoint.At(1500, 550))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.3, 0)]
    [InlineData(0.3, 0.02)]
    public void Densities_come_back_under_uneven_light_dust_and_flare(double falling, double flare)
    {
        var scan = RenderedStrip.Draw(Densities, falling, flare, dust: true);
        var read = StripScan.Read(scan, Through(Corners), Densities.Length, PaperKind.NegativeWorking, Known, whiteEdge: 0.2);
        for (var i = 0; i < Densities.Length; i++)
        {
            Assert.Equal(Densities[i], read.Densities[i].Value, 0.02 + (0.02 * Densities[i]));
        }
    }

    [Fact]
    public void A_strip_the_wrong_way_round_is_refused()
    {
        var scan = RenderedStrip.Draw([.. Densities.Reverse()], 0, 0, dust: false);
        Assert.Contains("upside down", Refusal(scan, Corners), StringComparison.Ordinal);
    }

    // Direct-positive paper is dark where it saw little light, so the darkest patch stands on the left; without a white edge the light counts as even.
    [Fact]
    public void A_direct_positives_strip_runs_from_dark_to_light()
    {
        double[] densities = [.. Densities.Reverse()];
        (PatchArea, Density)[] known = [(Patch(0), Density.FromValue(densities[0])), (Patch(5), Density.FromValue(densities[5]))];
        var read = StripScan.Read(RenderedStrip.Draw(densities, 0, 0, false), Through(Corners), 6, PaperKind.DirectPositive, known, 0.2);
        Assert.All(densities.Zip(read.Densities), pair => Assert.Equal(pair.First, pair.Second.Value, 0.02));
        var wrong = Assert.Throws<RefusalException>(() => StripScan.Read(RenderedStrip.Draw(Densities, 0, 0, false), Through(Corners), 6, PaperKind.DirectPositive, known, 0.2));
        Assert.Contains("upside down", wrong.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, 0.2)]
    [InlineData(101, 0.2)]
    [InlineData(6, 0.51)]
    [InlineData(6, -0.01)]
    public void Absurd_numbers_of_patches_and_edges_are_refused(int patches, double edge)
        => Assert.Throws<RefusalException>(() => StripScan.Read(RenderedStrip.Draw(Densities, 0, 0, false), Through(Corners), patches, PaperKind.NegativeWorking, Known, edge));

    // Turned by half a circle the edge that should be white runs over the patches, and would even them out.
    [Fact]
    public void A_strip_turned_by_half_a_circle_is_refused_though_its_white_edge_is_elsewhere()
        => Assert.Contains("upside down", Refusal(RenderedStrip.Draw(Densities, 0, 0, false), [Corners[2], Corners[3], Corners[0], Corners[1]]), StringComparison.Ordinal);

    [Fact]
    public void Marks_the_wrong_way_round_are_refused()
        => Assert.Contains("mirrored", Refusal(RenderedStrip.Draw(Densities, 0, 0, false), [Corners[1], Corners[0], Corners[3], Corners[2]]), StringComparison.Ordinal);

    [Fact]
    public void Marks_that_cross_are_refused()
        => Assert.Contains("four-sided", Refusal(RenderedStrip.Draw(Densities, 0, 0, false), [Corners[0], Corners[2], Corners[1], Corners[3]]), StringComparison.Ordinal);

    [Fact]
    public void A_clipped_scan_is_refused()
        => Assert.Contains("clipped", Refusal(RenderedStrip.Draw(Densities, 0, 0, false, exposure: 1.6), Corners), StringComparison.Ordinal);

    [Fact]
    public void A_patch_beyond_the_border_is_refused()
        => Assert.Contains("border", Refusal(RenderedStrip.Draw(Densities, 0, 0, false), [PixelPoint.At(40, 60), PixelPoint.At(900, 30), PixelPoint.At(910, 270), PixelPoint.At(30, 240)]), StringComparison.Ordinal);

    // R 0.80 → v 0.75 and R 0.05 → v 0.07 give b 0.90667 and a 0.02467; v 0.20 is then R 0.1934, density 0.714 (worked by hand).
    [Fact]
    public void Two_known_patches_give_flare_and_gain()
    {
        var scale = ReflectanceScale.Through([(0.75, Density.FromValue(-Math.Log10(0.80))), (0.07, Density.FromValue(-Math.Log10(0.05)))]);
        Assert.Equal(0.714, scale.DensityOf(0.20).Value, 0.0006);
    }

    private static IReadOnlyList<(PatchArea Area, Density Density)> Known
        => [(Patch(0), Density.FromValue(Densities[0])), (Patch(5), Density.FromValue(Densities[5]))];

    private static PatchArea Patch(int index) => new PatchArea(index / 6.0, 0.2, (index + 1) / 6.0, 1).Inside(0.25);

    private static Homography Through(PixelPoint[] corners) => Homography.Through(corners[0], corners[1], corners[2], corners[3]);

    private static string Refusal(ScanImage scan, PixelPoint[] corners)
        => Assert.Throws<RefusalException>(() => StripScan.Read(scan, Through(corners), 6, PaperKind.NegativeWorking, Known, 0.2)).Message;
}
