using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class KnownPatchTests
{
    // Even within its radius and wild outside: nothing of the outside may count.
    [Fact]
    public void Only_what_lies_within_its_radius_counts()
    {
        var scan = ScanPictures.Draw(80, 60, (column, row) => double.Hypot(column + 0.5 - 40.5, row + 0.5 - 30.5) <= 21 ? 0.4 : (column + row) % 2);
        Assert.Equal(0.4, Patch(40.5, 30.5, 20).LightOn(scan), 0.002);
    }

    // A seventh of its square in another tone is left out as dust is; half of it counts.
    [Fact]
    public void It_is_read_all_over()
    {
        var scan = ScanPictures.Draw(80, 60, (column, _) => column < 40 ? 0.4 : 0.8);
        Assert.Equal(0.4, Patch(30, 30, 20).LightOn(scan), 0.002);
        Assert.Equal(0.6, Patch(40, 30, 20).LightOn(scan), 0.002);
        Assert.Equal(0.8, Patch(50, 30, 20).LightOn(scan), 0.002);
    }

    [Theory]
    [InlineData(14, 30)]
    [InlineData(86, 30)]
    [InlineData(50, 14)]
    [InlineData(50, 46)]
    public void It_must_lie_inside_the_picture(double x, double y)
    {
        var scan = ScanPictures.Draw(100, 60, (_, _) => 0.5);
        Assert.Contains("border", Assert.Throws<RefusalException>(() => Patch(x, y, 20).LightOn(scan)).Message, StringComparison.Ordinal);

        // 20/√2 = 14.142: half a pixel further in, the square in the circle is whole.
        Assert.Equal(0.5, Patch(Math.Clamp(x, 14.5, 85.5), Math.Clamp(y, 14.5, 45.5), 20).LightOn(scan), 0.002);
    }

    [Theory]
    [InlineData(1, "white")]
    [InlineData(0, "black")]
    public void More_than_a_fiftieth_clipped_is_refused_and_a_speck_is_not(double extreme, string word)
    {
        // Of 40 × 40 samples a square of four is a hundredth, of six a forty-fourth.
        ScanImage With(int side) => ScanPictures.Draw(80, 80, (column, row) => column is >= 30 && column < 30 + side && row is >= 40 && row < 40 + side ? extreme : 0.5);
        var patch = Patch(40, 40, 20 * Math.Sqrt(2));
        Assert.Equal(0.5, patch.LightOn(With(4)), 0.002);
        Assert.Contains("clipped to " + word, Assert.Throws<RefusalException>(() => patch.LightOn(With(6))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.9)]
    [InlineData(2001)]
    [InlineData(double.NaN)]
    public void An_absurd_radius_is_refused(double radius)
        => Assert.Contains("radius", Assert.Throws<RefusalException>(() => Patch(40, 30, radius).LightOn(ScanPictures.Draw(80, 60, (_, _) => 0.5))).Message, StringComparison.Ordinal);

    private static KnownPatch Patch(double x, double y, double radius) => new(PixelPoint.At(x, y), radius, Density.FromValue(0.1));
}
