using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class PrintExposuresTests
{
    private const int Width = 24;
    private const int Height = 18;
    private const int Rim = 2;
    private static readonly LogisticCurve Negative = LogisticCurve.FromRange(
        PaperKind.NegativeWorking, Density.FromValue(0.06), Density.FromValue(2), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    // The print's reflectances rise evenly to the right and downwards, so between pixels they are known too.
    private static double Reflectance(double column, double row) => (20 + (4 * column) + (5 * row)) / 255;

    private static double Stops(double seen, double expected)
        => Math.Log2(Negative.ExposureFor(Density.FromValue(seen)).LuxSeconds / Negative.ExposureFor(Density.FromValue(expected)).LuxSeconds);

    // Where the print lies so far to the right and so far down, the pixel that belongs to another is as far away from it, and both must be inside the rim.
    [Fact]
    public void A_print_that_lies_beside_its_prediction_is_compared_where_it_lies() => Gen.Select(Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[0.3, 1.2]).Sample((right, down, expected) =>
    {
        var stops = Made((_, _) => (float)expected, right, down).StopsOff();
        Assert.Equal(Width * Height, stops.Length);
        for (var i = 0; i < stops.Length; i++)
        {
            var (column, row) = (i % Width, i / Width);
            var (x, y) = (column + right, row + down);
            var isInside = column >= Rim && row >= Rim && column < Width - Rim && row < Height - Rim && x >= Rim && y >= Rim && x < Width - Rim - 1 && y < Height - Rim - 1;
            Assert.Equal(isInside, !float.IsNaN(stops[i]));
            if (isInside)
            {
                Assert.Equal(Stops(-Math.Log10(Reflectance(x, y)), expected), stops[i], 2e-3);
            }
        }
    });

    // Less than the paper's lightest tone in both, or more than its darkest in both: how much light that was cannot be told. One of them is enough to tell.
    [Theory]
    [InlineData(0.08, 0.09, false)]
    [InlineData(1.9, 1.85, false)]
    [InlineData(0.08, 0.3, true)]
    [InlineData(0.3, 0.08, true)]
    [InlineData(1.9, 1.5, true)]
    [InlineData(1.5, 1.9, true)]
    [InlineData(0.08, 1.9, true)]
    public void Beyond_what_the_paper_can_tell_a_difference_is_known_only_where_one_is_within(double seen, double expected, bool isKnown)
    {
        var plane = new DensityPlane(Width, Height, [.. Enumerable.Repeat((float)expected, Width * Height)]);
        var stops = new PrintExposures(Print((_, _) => Math.Pow(10, -seen)), plane, new LgExposureOfDensity(Negative), Rim, 0, 0).StopsOff();
        Assert.Equal(isKnown, !float.IsNaN(stops[(9 * Width) + 12]));
    }

    [Fact]
    public void What_the_prediction_does_not_know_is_not_compared()
    {
        var exposures = Made((column, _) => column < 12 ? float.NaN : 0.5f, 0, 0);
        var stops = exposures.StopsOff();
        Assert.All(Enumerable.Range(0, stops.Length).Where(i => i % Width < 12), i => Assert.True(float.IsNaN(stops[i])));
        var predicted = exposures.Predicted();
        Assert.True(float.IsNaN(predicted[(5 * Width) + 11]));
        Assert.Equal(Negative.ExposureFor(Density.FromValue(0.5)).LuxSeconds, predicted[(5 * Width) + 12], 1e-3);
    }

    [Fact]
    public void Exposures_are_those_that_would_give_the_densities()
    {
        var seen = Made((_, _) => 0.5f, 0, 0).Seen();
        Assert.Equal(Width * Height, seen.Length);
        for (var i = 0; i < seen.Length; i += 7)
        {
            var exposure = Negative.ExposureFor(Density.FromValue(-Math.Log10(Reflectance(i % Width, i / Width)))).LuxSeconds;
            Assert.Equal(exposure, seen[i], 0.002 * exposure);
        }
    }

    private static PrintExposures Made(Func<int, int, float> expected, double right, double down) => new(
        Print((column, row) => Reflectance(column, row)),
        new DensityPlane(Width, Height, [.. Enumerable.Range(0, Width * Height).Select(i => expected(i % Width, i / Width))]),
        new LgExposureOfDensity(Negative),
        Rim,
        right,
        down);

    private static ScannedPrint Print(Func<int, int, double> reflectance)
    {
        var scan = ScanPictures.Draw(Width, Height, reflectance);
        return ScannedPrint.Read(new PrintSetting(scan, ScanPictures.Whole(scan), ScanPictures.LightIsReflectance, null), new PrintLie(0, false), Width, Height);
    }
}
