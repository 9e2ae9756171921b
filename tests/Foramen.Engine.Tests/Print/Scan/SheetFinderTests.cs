using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class SheetFinderTests
{
    private const int Width = 300;
    private const int Height = 220;
    private static readonly (double X, double Y)[] Usual = [(60.3, 50.6), (245.8, 40.2), (251.4, 180.9), (50.7, 170.1)];

    // Drawn by the share of each pixel that it covers; the light falls off, and the picture within the rim goes down to the ground's own tone.
    [Fact]
    public void Corners_of_a_sheet_that_lies_anyhow_are_found_to_a_third_of_a_pixel() => Gen.Select(Gen.Double[-40, 40], Gen.Double[-12, 12].Array[8], Gen.Bool).Sample((degrees, off, dark) =>
    {
        var (c, s) = (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
        (double X, double Y) At(double x, double y, int i) => (150 + (c * (x + off[i])) - (s * (y + off[i + 1])), 110 + (s * (x + off[i])) + (c * (y + off[i + 1])));
        (double X, double Y)[] corners = [At(-70, -50, 0), At(70, -50, 2), At(70, 50, 4), At(-70, 50, 6)];
        var (ground, rim) = dark ? (0.2, 0.7) : (0.7, 0.25);
        double Falling(double x, double y) => Math.Exp((-0.4 * (x - 150) * (x - 150) / (150 * 150)) + (0.2 * (y - 110) / 110));
        var scan = ScanPictures.DrawSheet(
            Width,
            Height,
            corners,
            (x, y) => ground * Falling(x, y),
            (x, y) => (double.Hypot(x - 150, y - 110) < 30 ? ground : rim) * Falling(x, y));
        Near(corners, SheetFinder.Find(scan), 0.35);
    }, iter: Samples.Of(20));

    // A scan of more pixels than are looked at, with dust on the ground and a stroke over an edge.
    [Fact]
    public void Of_a_large_scan_every_pixel_still_counts()
    {
        (double X, double Y)[] corners = [.. Usual.Select(one => (one.X * 3, one.Y * 3))];
        var scan = ScanPictures.DrawSheet(Width * 3, Height * 3, corners, (x, y) => ((int)(x / 3) * 7 + (int)(y / 3) * 31) % 97 == 0 ? 0.9 : 0.3, (x, y) => x is > 400 and < 410 && y < 200 ? 0.32 : 0.75);
        Near(corners, SheetFinder.Find(scan), 0.5);
    }

    // The names begin at the corner nearest to the upper left and go clockwise.
    [Fact]
    public void A_sheet_turned_by_more_than_a_half_quarter_is_named_as_it_lies()
    {
        (double X, double Y)[] corners = [(120, 30), (220, 130), (170, 190), (70, 90)];
        Near(corners, SheetFinder.Find(ScanPictures.DrawSheet(Width, Height, corners, (_, _) => 0.3, (_, _) => 0.8)), 0.35);
        corners = [(130, 30), (230, 120), (170, 190), (70, 85)];
        Near([corners[3], corners[0], corners[1], corners[2]], SheetFinder.Find(ScanPictures.DrawSheet(Width, Height, corners, (_, _) => 0.3, (_, _) => 0.8)), 0.35);
    }

    [Fact]
    public void Of_two_sheets_the_larger_counts()
    {
        var scan = ScanPictures.DrawSheet(Width, Height, Usual, (x, y) => x is > 12 and < 40 && y is > 12 and < 200 ? 0.8 : 0.3, (_, _) => 0.8);
        Near(Usual, SheetFinder.Find(scan), 0.35);
    }

    [Theory]
    [InlineData(0.3, 0.3)]
    [InlineData(0.3, 0.33)]
    public void A_rim_of_the_grounds_tone_cannot_be_told(double ground, double rim)
        => Assert.Contains("cannot be told", Refused(ScanPictures.DrawSheet(Width, Height, Usual, (_, _) => ground, (_, _) => rim)), StringComparison.Ordinal);

    // A seventh lighter, ln 0.133: just enough.
    [Fact]
    public void A_rim_a_little_lighter_than_the_ground_can_be_told()
        => Near(Usual, SheetFinder.Find(ScanPictures.DrawSheet(Width, Height, Usual, (_, _) => 0.35, (_, _) => 0.4)), 1);

    // A twentieth of 300 × 220 is 3300 pixels: a square of 62 is more, one of 52 is less.
    [Fact]
    public void A_sheet_that_is_hardly_there_is_dust()
    {
        ScanImage Square(double side) => ScanPictures.DrawSheet(
            Width, Height, [(100, 80), (100 + side, 80), (100 + side, 80 + side), (100, 80 + side)], (_, _) => 0.3, (_, _) => 0.8);
        Assert.Contains("cannot be told", Refused(Square(52)), StringComparison.Ordinal);
        Near([(100, 80), (162, 80), (162, 142), (100, 142)], SheetFinder.Find(Square(62)), 0.35);
    }

    [Theory]
    [InlineData(0, 40, 200, 180)]
    [InlineData(100, 40, 300, 180)]
    [InlineData(60, 0, 240, 150)]
    [InlineData(60, 60, 240, 220)]
    public void A_sheet_that_reaches_a_border_is_refused(double left, double top, double right, double bottom)
        => Assert.Contains(
            "border",
            Refused(ScanPictures.DrawSheet(Width, Height, [(left, top), (right, top), (right, bottom), (left, bottom)], (_, _) => 0.3, (_, _) => 0.8)),
            StringComparison.Ordinal);

    // The largest four-sided figure in a disc holds 2/π = 0.64 of it, that in a sheet with half of its shorter side cut off obliquely 0.9 of it, with a seventh of it cut off nearly all.
    [Fact]
    public void What_is_not_four_sided_is_no_sheet_but_a_clipped_corner_is_borne()
    {
        Assert.Contains("four-sided", Refused(ScanPictures.Draw(Width, Height, (column, row) => double.Hypot(column - 150, row - 110) < 80 ? 0.8 : 0.3)), StringComparison.Ordinal);
        Assert.Contains(
            "four-sided",
            Refused(ScanPictures.DrawSheet(Width, Height, [(60, 40), (170, 40), (240, 110), (240, 180), (60, 180)], (_, _) => 0.3, (_, _) => 0.8)),
            StringComparison.Ordinal);
        Assert.NotNull(SheetFinder.Find(ScanPictures.DrawSheet(Width, Height, [(60, 40), (220, 40), (240, 60), (240, 180), (60, 180)], (_, _) => 0.3, (_, _) => 0.8)));
    }

    [Fact]
    public void A_scan_of_a_few_pixels_is_refused()
    {
        Assert.Contains("shorter side", Refused(ScanPictures.Draw(300, 99, (_, _) => 0.5)), StringComparison.Ordinal);
        Assert.Contains("cannot be told", Refused(ScanPictures.Draw(300, 100, (_, _) => 0.5)), StringComparison.Ordinal);
    }

    private static string Refused(ScanImage scan) => Assert.Throws<RefusalException>(() => SheetFinder.Find(scan)).Message;

    private static void Near((double X, double Y)[] corners, PrintCorners found, double pixels)
    {
        PixelPoint[] all = [found.TopLeft, found.TopRight, found.BottomRight, found.BottomLeft];
        for (var i = 0; i < 4; i++)
        {
            Assert.InRange(double.Hypot(all[i].X - corners[i].X, all[i].Y - corners[i].Y), 0, pixels);
        }
    }
}
