using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>Strips drawn in perspective, with uneven light, dust and flare that are known; codes in proportion to light.</summary>
public class StripScanTests
{
    private const int Width = 640;
    private const int Height = 300;
    private static readonly double[] Densities = [0.08, 0.15, 0.31, 0.56, 0.92, 1.25];
    private static readonly PixelPoint[] Corners = [PixelPoint.At(40, 60), PixelPoint.At(600, 30), PixelPoint.At(610, 270), PixelPoint.At(30, 240)];

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

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.3, 0)]
    [InlineData(0.3, 0.02)]
    public void Densities_come_back_under_uneven_light_dust_and_flare(double falling, double flare)
    {
        var scan = Draw(Densities, falling, flare, dust: true);
        var read = StripScan.Read(scan, Through(Corners), Densities.Length, PaperKind.NegativeWorking, Known, whiteEdge: 0.2);
        for (var i = 0; i < Densities.Length; i++)
        {
            Assert.Equal(Densities[i], read.Densities[i].Value, 0.02 + (0.02 * Densities[i]));
        }
    }

    [Fact]
    public void A_strip_the_wrong_way_round_is_refused()
    {
        var scan = Draw([.. Densities.Reverse()], 0, 0, dust: false);
        Assert.Contains("upside down", Refusal(scan, Corners), StringComparison.Ordinal);
    }

    [Fact]
    public void Marks_the_wrong_way_round_are_refused()
        => Assert.Contains("mirrored", Refusal(Draw(Densities, 0, 0, false), [Corners[1], Corners[0], Corners[3], Corners[2]]), StringComparison.Ordinal);

    [Fact]
    public void Marks_that_cross_are_refused()
        => Assert.Contains("four-sided", Refusal(Draw(Densities, 0, 0, false), [Corners[0], Corners[2], Corners[1], Corners[3]]), StringComparison.Ordinal);

    [Fact]
    public void A_clipped_scan_is_refused()
        => Assert.Contains("clipped", Refusal(Draw(Densities, 0, 0, false, exposure: 1.6), Corners), StringComparison.Ordinal);

    [Fact]
    public void A_patch_beyond_the_border_is_refused()
        => Assert.Contains("border", Refusal(Draw(Densities, 0, 0, false), [PixelPoint.At(40, 60), PixelPoint.At(900, 30), PixelPoint.At(910, 270), PixelPoint.At(30, 240)]), StringComparison.Ordinal);

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

    // Every place between the marks is drawn by going over them finely; the rest of the picture is grey.
    private static ScanImage Draw(double[] densities, double falling, double flare, bool dust, double exposure = 0.9)
    {
        var codes = new byte[Width * Height];
        Array.Fill(codes, (byte)128);
        var map = Through(Corners);
        for (var i = 0; i < 1800; i++)
        {
            for (var j = 0; j < 800; j++)
            {
                var (u, v) = ((i + 0.5) / 1800, (j + 0.5) / 800);
                var density = v < 0.2 ? 0.08 : densities[Math.Min(5, (int)(u * 6))];
                var light = exposure * ((Math.Pow(10, -density) * (1 - flare)) + flare) * Math.Exp(-falling * (u - 0.5) * (u - 0.5) * 4);
                light = dust && (i * 7919 + (j * 104_729)) % 50 == 0 ? 0.9 : light;
                var (x, y) = map.Map(u, v);
                codes[((int)y * Width) + (int)x] = (byte)Math.Clamp(Math.Round(255 * light), 0, 255);
            }
        }

        return ScanImage.FromGrey(Width, Height, codes, ScanEncoding.Linear);
    }
}
