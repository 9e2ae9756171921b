using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Scan;

public class ReducedScanTests
{
    // Sums of whole squares of pixels, gathered one by one; the fewest squares of whole pixels that are not too many.
    [Fact]
    public void A_square_is_the_mean_of_its_pixels() => Gen.Select(Gen.Int[1, 60], Gen.Int[1, 60], Gen.Int[1, 30], Gen.Int[1, 1000]).Sample((width, height, most, seed) =>
    {
        var chance = new Random(seed);
        var lights = Enumerable.Range(0, width * height).Select(_ => chance.Next(256) / 255.0).ToArray();
        var small = ReducedScan.Of(ScanPictures.Draw(width, height, (column, row) => lights[(row * width) + column]), most);
        var longSide = Math.Max(width, height);
        Assert.Equal(Enumerable.Range(1, longSide).First(step => step * most >= longSide), small.Step);
        Assert.Equal((Math.Max(1, width / small.Step), Math.Max(1, height / small.Step)), (small.Width, small.Height));
        for (var i = 0; i < small.Width * small.Height; i++)
        {
            var (column, row) = (i % small.Width, i / small.Width);
            var mean = Enumerable.Range(0, width * height)
                .Where(pixel => pixel % width / small.Step == column && pixel / width / small.Step == row).Average(pixel => lights[pixel]);
            Assert.Equal(Math.Log(Math.Max(1e-4, mean)), small.LnAt(column, row), 1e-4);
        }
    }, iter: Samples.Of(60));

    [Fact]
    public void Black_is_a_ten_thousandth_so_that_its_ln_is_a_number()
        => Assert.Equal(Math.Log(1e-4), ReducedScan.Of(ScanPictures.Draw(4, 4, (_, _) => 0), 2).LnAt(1, 1), 1e-5);
}
