using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class ScannedPrintTests
{
    private static readonly LogisticCurve Negative = Curve(PaperKind.NegativeWorking);
    private static readonly LogisticCurve Direct = Curve(PaperKind.DirectPositive);

    // Codes that tell each pixel from the others near it, none at the ends of the scan.
    private static readonly ScanImage Any = ScanPictures.Draw(48, 32, (column, row) => (10 + ((column * 7) + (row * 31)) % 230) / 255.0);

    [Fact]
    public void On_its_own_grid_every_pixel_is_itself()
    {
        var print = Read(Any, new PrintLie(0, false), 48, 32);
        Assert.Equal((48, 32), (print.Width, print.Height));
        EachPixel(print, (column, row) => Any.LightAt(column, row));
    }

    // What is called the top after a quarter is the left side, read from below: the upper left pixel of the turned print is the lower left one of the scan.
    [Fact]
    public void Turned_and_mirrored_its_pixels_change_places()
    {
        EachPixel(Read(Any, new PrintLie(0, true), 48, 32), (column, row) => Any.LightAt(47 - column, row));
        EachPixel(Read(Any, new PrintLie(2, false), 48, 32), (column, row) => Any.LightAt(47 - column, 31 - row));
        EachPixel(Read(Any, new PrintLie(1, false), 32, 48), (column, row) => Any.LightAt(row, 31 - column));
        EachPixel(Read(Any, new PrintLie(3, true), 32, 48), (column, row) => Any.LightAt(47 - row, 31 - column));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Coarser_grids_hold_means(int times)
    {
        var scan = ScanPictures.Draw(12 * times, 9 * times, (column, row) => ((column * 13) + (row * 29)) % 200 / 255.0);
        var print = Read(scan, new PrintLie(0, false), 12, 9);
        EachPixel(print, (column, row) => Enumerable.Range(0, times * times).Average(i => scan.LightAt((column * times) + (i % times), (row * times) + (i / times))));
    }

    // Light that falls to the right is taken out where it lies on the scan, whichever way round the print is read.
    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(2, false)]
    public void An_even_sheet_in_uneven_light_is_even(int quarters, bool mirrored)
    {
        (double X, double Y)[] sheet = [(80, 60), (240, 60), (240, 180), (80, 180)];
        var scan = ScanPictures.DrawSheet(320, 240, sheet, (x, _) => 0.5 * Math.Exp(x / 320 - 0.5), (x, _) => 0.3 * Math.Exp(x / 320 - 0.5));
        var corners = ScanPictures.Named(sheet);
        var setting = new PrintSetting(scan, corners, ScanPictures.LightIsReflectance, LightField.Around(scan, corners));
        var print = ScannedPrint.Read(setting, new PrintLie(quarters, mirrored), 16, 12, TestContext.Current.CancellationToken);
        EachPixel(print, (_, _) => 0.3, 0.01);
    }

    // Corners that were set by hand may lie beside the picture by a pixel: its last pixels count there.
    [Fact]
    public void Beyond_the_border_the_last_pixels_count()
    {
        var scan = ScanPictures.Draw(40, 40, (column, row) => column == 39 ? 0.9 : row == 39 ? 0.7 : 0.2);
        var corners = new PrintCorners(PixelPoint.At(0, 0), PixelPoint.At(80, 0), PixelPoint.At(80, 80), PixelPoint.At(0, 80));
        var print = ScannedPrint.Read(new PrintSetting(scan, corners, ScanPictures.LightIsReflectance, null), new PrintLie(0, false), 80, 80, TestContext.Current.CancellationToken);
        EachPixel(print, (column, row) => column >= 39 ? 0.9 : row >= 39 ? 0.7 : 0.2, 0.003);
    }

    [Fact]
    public void What_is_clipped_is_told_from_a_hundredth_on()
    {
        ScannedPrint With(int light, int dark) => Read(
            ScanPictures.Draw(20, 20, (column, row) => (row * 20) + column < light ? 1 : (row * 20) + column >= 400 - dark ? 0 : 0.5), new PrintLie(0, false), 20, 20);
        var print = With(5, 4);
        Assert.Equal((5 / 400.0, 4 / 400.0), (print.ClippedLight, print.ClippedDark));
        Assert.True(print.IsClippedLight);
        Assert.False(print.IsClippedDark);
        Assert.False(With(4, 5).IsClippedLight);
        Assert.True(With(4, 5).IsClippedDark);
    }

    [Fact]
    public void Around_a_place_only_pixels_within_the_radius_count_and_dust_does_not()
    {
        var scan = ScanPictures.Draw(30, 20, (column, row) => double.Hypot(column - 12, row - 8) > 3 ? 0.9 : (column, row) is (12, 8) or (13, 9) or (10, 8) ? 0 : 0.25);
        var print = Read(scan, new PrintLie(0, false), 30, 20);
        Assert.Equal(-Math.Log10(64 / 255.0), print.DensityAround(12, 8, 3)!.Value.Value, 1e-5);
        Assert.Equal(-Math.Log10(230 / 255.0), print.DensityAround(20.4, 12.3, 0.75)!.Value.Value, 1e-5);
    }

    // Five pixels of one row: one is left out at either end, so the mean of the middle three.
    [Fact]
    public void A_fifth_is_left_out_at_either_end()
    {
        double[] lights = [0.1, 0.2, 0.5, 0.8, 0.95];
        var print = Read(ScanPictures.Draw(8, 8, (column, row) => row == 0 && column < 5 ? lights[column] : 0.02), new PrintLie(0, false), 8, 8);

        // A radius of 2.2 about (2, −1.5), above the sheet: columns 1 to 3 of the first row are within.
        Assert.Equal(-Math.Log10(0.5), print.DensityAround(2, -1.5, 2.2)!.Value.Value, 0.002);

        // Of 2.58 about (2, −1.6): columns 0 to 4, at √(2² + 1.6²) = 2.56, and the second row is out of it.
        Assert.Equal(-Math.Log10((51 + 128 + 204) / 3.0 / 255), print.DensityAround(2, -1.6, 2.58)!.Value.Value, 1e-5);
    }

    [Theory]
    [InlineData(-2, 5, false)]
    [InlineData(5, -2, false)]
    [InlineData(9.1, 5, false)]
    [InlineData(5, 9.1, false)]
    [InlineData(-1, 5, true)]
    [InlineData(5, 8, true)]
    [InlineData(0, 0, true)]
    [InlineData(7, 7, true)]
    public void Beside_the_sheet_nothing_is_known(double column, double row, bool isKnown)
        => Assert.Equal(isKnown, Read(ScanPictures.Draw(8, 8, (_, _) => 0.5), new PrintLie(0, false), 8, 8).DensityAround(column, row, 1) is not null);

    [Theory]
    [InlineData(0.4)]
    [InlineData(101)]
    public void An_absurd_radius_is_refused(double radius)
        => Assert.Throws<RefusalException>(() => Read(Any, new PrintLie(0, false), 48, 32).DensityAround(5, 5, radius));

    [Theory]
    [InlineData(7, 8)]
    [InlineData(8, 7)]
    [InlineData(12_001, 8)]
    [InlineData(8, 12_001)]
    public void An_absurd_size_is_refused(int width, int height) => Assert.Throws<RefusalException>(() => Read(Any, new PrintLie(0, false), width, height));

    // IEC 61966-2-1: the paper's white is code 255, a density 0.666 above it is the reflectance of code 128.
    [Fact]
    public void A_direct_positive_is_shown_as_it_is_and_a_negative_mirrored_between_its_lightest_and_darkest()
    {
        var lights = new[] { Math.Pow(10, -0.1), Math.Pow(10, -0.766), 0.001, 1 };
        var print = Read(ScanPictures.Draw(8, 8, (column, row) => lights[row / 2]), new PrintLie(0, false), 8, 8);
        var direct = print.PositiveCodes(Direct);
        Assert.Equal(64, direct.Length);
        Assert.Equal(255, direct[0]);
        Assert.Equal(128, direct[16], 1.0);
        Assert.Equal(255, direct[63]);

        // 0.766 of 0.1 to 2.1 is 1.434 mirrored: 1.334 below white, reflectance 0.0463 (code 60.6). White becomes 2 below it, black is white.
        var negative = print.PositiveCodes(Negative);
        Assert.Equal(60.6, negative[16], 1.0);
        Assert.Equal(255, negative[32]);
        Assert.Equal(255 * ((1.055 * Math.Pow(0.01, 1 / 2.4)) - 0.055), negative[0], 1.0);
    }

    [Fact]
    public void Densities_are_those_of_the_reflectances_and_end_at_four()
    {
        var print = Read(ScanPictures.Draw(8, 8, (column, _) => column == 0 ? 0 : 0.2), new PrintLie(0, false), 8, 8);
        var densities = print.Densities();
        Assert.Equal(4, densities[0], 1e-6);
        Assert.Equal(-Math.Log10(0.2), densities[1], 1e-6);
    }

    private static ScannedPrint Read(ScanImage scan, PrintLie lie, int width, int height)
        => ScannedPrint.Read(new PrintSetting(scan, ScanPictures.Whole(scan), ScanPictures.LightIsReflectance, null), lie, width, height);

    private static void EachPixel(ScannedPrint print, Func<int, int, double> expected, double within = 1e-5)
    {
        var reflectances = print.Reflectances.ToArray();
        for (var i = 0; i < reflectances.Length; i++)
        {
            Assert.Equal(expected(i % print.Width, i / print.Width), reflectances[i], within);
        }
    }

    private static LogisticCurve Curve(PaperKind kind) => LogisticCurve.FromRange(
        kind, Density.FromValue(0.1), Density.FromValue(2.1), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));
}
