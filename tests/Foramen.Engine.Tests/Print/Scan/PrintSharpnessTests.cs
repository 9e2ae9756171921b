using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>
/// Prints that are the prediction softened by a Gaussian, whose contrast falls as exp(−2π²σ²f²) (Fourier pair; any table of transforms): the softening is done place by place, not by frequencies.
/// </summary>
public class PrintSharpnessTests
{
    private const double Pitch = 0.25;
    private static readonly LogisticCurve Negative = LogisticCurve.FromRange(
        PaperKind.NegativeWorking, Density.FromValue(0.06), Density.FromValue(2), 120, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    [Theory]
    [InlineData(0.8, 0, 0)]
    [InlineData(1.2, 0, 0)]
    [InlineData(0.8, 0.4, -0.3)]
    [InlineData(1.2, 2.5, 1.2)]
    public void A_softer_print_tells_by_how_much_wherever_it_lies(double pixels, double right, double down)
    {
        var sharpness = Of(168, 136, 4, pixels, right, down)!;
        Assert.Equal(pixels * Pitch, sharpness.ExtraSpreadMillimetres!.Value, 0.06 * pixels * Pitch);
        Assert.Equal(sharpness.VarianceSquareMillimetres, Math.Pow(sharpness.ExtraSpreadMillimetres.Value, 2), 1e-12);
        Assert.InRange(sharpness.VarianceSdSquareMillimetres, 0, 0.2 * sharpness.VarianceSquareMillimetres);
    }

    // The other way round: the print is the prediction before it was softened.
    [Fact]
    public void A_sharper_print_has_less_than_no_softening()
    {
        var sharpness = PrintSharpness.Of(Exposures(168, 136, 4, 0, 0, 0, softPrediction: 0.8), Pitch)!;
        Assert.Equal(-Math.Pow(0.8 * Pitch, 2), sharpness.VarianceSquareMillimetres, 0.1 * Math.Pow(0.8 * Pitch, 2));
        Assert.Null(sharpness.ExtraSpreadMillimetres);
    }

    [Fact]
    public void A_print_as_predicted_is_as_sharp()
        => Assert.Equal(0, Of(168, 136, 4, 0, 0, 0)!.VarianceSquareMillimetres, Math.Pow(0.15 * Pitch, 2));

    // Softness in millimetres goes with the pitch, the pixels being the same.
    [Fact]
    public void Twice_the_pitch_is_twice_the_spread()
    {
        var exposures = Exposures(168, 136, 4, 1, 0, 0);
        Assert.Equal(2 * PrintSharpness.Of(exposures, Pitch)!.ExtraSpreadMillimetres!.Value, PrintSharpness.Of(exposures, 2 * Pitch)!.ExtraSpreadMillimetres!.Value, 1e-9);
    }

    // One square of 32 pixels is all that a picture of 33 has room for; of 31 there is none.
    [Fact]
    public void A_picture_too_small_for_a_square_tells_nothing()
    {
        Assert.NotNull(Of(33 + 8, 33 + 8, 4, 0.8, 0, 0));
        Assert.Null(Of(31 + 8, 60 + 8, 4, 0.8, 0, 0));
        Assert.Null(Of(60 + 8, 31 + 8, 4, 0.8, 0, 0));
    }

    // A square that would be read beyond the print counts for nothing, and where none is left nothing is told.
    [Theory]
    [InlineData(12, 0)]
    [InlineData(-12, 0)]
    [InlineData(0, 12)]
    [InlineData(0, -12)]
    public void A_print_that_lies_out_of_the_picture_tells_nothing(double right, double down) => Assert.Null(Of(41, 41, 4, 0.8, right, down));

    [Fact]
    public void Squares_with_something_unknown_are_left_out()
    {
        var sharpness = PrintSharpness.Of(Exposures(168, 136, 4, 1, 0, 0, unknown: (column, row) => column == 20 || row == 120), Pitch)!;
        Assert.Equal(Pitch, sharpness.ExtraSpreadMillimetres!.Value, 0.06 * Pitch);
        Assert.Null(PrintSharpness.Of(Exposures(168, 136, 4, 1, 0, 0, unknown: (column, _) => column % 20 == 0), Pitch));
    }

    [Fact]
    public void A_print_of_something_else_tells_nothing()
        => Assert.Null(PrintSharpness.Of(Exposures(168, 136, 4, 0, 0, 0, seedOfPrint: 77), Pitch));

    // Half the light throughout is an offset of the ln and no softness.
    [Fact]
    public void A_darker_print_is_no_softer()
        => Assert.Equal(Pitch, PrintSharpness.Of(Exposures(168, 136, 4, 1, 0, 0, lighter: 0.7), Pitch)!.ExtraSpreadMillimetres!.Value, 0.06 * Pitch);

    // The tighter squares are used where there is room for many of them: five across.
    [Theory]
    [InlineData(32 * 5)]
    [InlineData(64 * 5)]
    public void Larger_pictures_are_cut_into_larger_squares_and_say_the_same(int inner)
        => Assert.Equal(1.2 * Pitch, Of(inner + 8, inner + 8, 4, 1.2, 0, 0)!.ExtraSpreadMillimetres!.Value, 0.05 * 1.2 * Pitch);

    private static PrintSharpness? Of(int width, int height, int rim, double soft, double right, double down)
        => PrintSharpness.Of(Exposures(width, height, rim, soft, right, down), Pitch);

    private static PrintExposures Exposures(
        int width, int height, int rim, double soft, double right, double down, double softPrediction = 0, int seedOfPrint = 5, double lighter = 1, Func<int, int, bool>? unknown = null)
    {
        // Detail of about a pixel and a half, so that it can be moved by parts of a pixel: the spread of both is 0.7 at least.
        const double Own = 0.7;
        var expected = Detail(width, height, 5, double.Hypot(Own, softPrediction), 0, 0);
        var seen = Detail(width, height, seedOfPrint, double.Hypot(Own, soft), right, down);
        var scan = ScanPictures.Draw(width, height, (column, row) => Math.Pow(10, -DensityOf(seen[(row * width) + column] * lighter)));
        var print = ScannedPrint.Read(new PrintSetting(scan, ScanPictures.Whole(scan), ScanPictures.LightIsReflectance, null), new PrintLie(0, false), width, height);
        var plane = new DensityPlane(width, height, [.. expected.Select((one, i) => unknown?.Invoke(i % width, i / width) == true ? float.NaN : (float)DensityOf(one))]);
        return new PrintExposures(print, plane, new LgExposureOfDensity(Negative), rim, right, down);
    }

    private static double DensityOf(double luxSeconds) => Negative.DensityAt(LuminousExposure.FromLuxSeconds(luxSeconds)).Value;

    // Points of light on every second pixel, each softened where it lies: chance, softened by a Gaussian across and then down, moved by any part of a pixel.
    private static double[] Detail(int width, int height, int seed, double spread, double right, double down)
    {
        var chance = new Random(seed);
        const int Margin = 8;
        var (columns, rows) = (width + (2 * Margin), height + (2 * Margin));
        var points = Enumerable.Range(0, columns * rows).Select(_ => chance.NextDouble() - 0.5).ToArray();
        var (across, lines) = (new double[width * rows], new double[width * height]);
        for (var i = 0; i < across.Length; i++)
        {
            var at = (i % width) + Margin - right;
            for (var column = Math.Max(0, (int)at - 6); column <= Math.Min(columns - 1, (int)at + 7); column++)
            {
                across[i] += points[(i / width * columns) + column] * Gauss(column - at, spread);
            }
        }

        for (var i = 0; i < lines.Length; i++)
        {
            var at = (i / width) + Margin - down;
            for (var row = Math.Max(0, (int)at - 6); row <= Math.Min(rows - 1, (int)at + 7); row++)
            {
                lines[i] += across[(row * width) + (i % width)] * Gauss(row - at, spread);
            }
        }

        return [.. lines.Select(one => Math.Clamp(2.5 + (4 * one), 1.2, 5))];
    }

    private static double Gauss(double distance, double spread) => Math.Exp(-distance * distance / (2 * spread * spread)) / (spread * Math.Sqrt(2 * Math.PI));
}
