using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class BlockExtremesTests
{
    private static readonly Gen<(int Width, int Height, byte[] Codes)> AnyScan = Gen.Select(Gen.Int[1, 11], Gen.Int[1, 11])
        .SelectMany((width, height) => Gen.Byte.Array[width * height].Select(codes => (width, height, codes)));

    // By the definition, pixel by pixel: a small scan is laid out in blocks of two by two, cut where it ends.
    [Fact]
    public void Each_block_keeps_its_darkest_and_its_brightest_code() => AnyScan.Sample(scan =>
    {
        var blocks = BlockExtremes.Of(ScanImage.FromGrey(scan.Width, scan.Height, scan.Codes));
        Assert.Equal((2, (int)Math.Ceiling(scan.Width / 2.0), (int)Math.Ceiling(scan.Height / 2.0)), (blocks.Side, blocks.Columns, blocks.Rows));
        for (var block = 0; block < blocks.Columns * blocks.Rows; block++)
        {
            var own = scan.Codes.Where((_, i) => i % scan.Width / 2 == block % blocks.Columns && i / scan.Width / 2 == block / blocks.Columns).ToList();
            Assert.Equal((own.Min(), own.Max()), (blocks.Darkest[block], blocks.Brightest[block]));
        }
    });

    // Of an even number the lower of the two in the middle.
    [Fact]
    public void The_median_is_that_of_the_blocks_first_pixels() => AnyScan.Sample(scan =>
    {
        var first = scan.Codes.Where((_, i) => i % scan.Width % 2 == 0 && i / scan.Width % 2 == 0).Order().ToList();
        Assert.Equal(first[(first.Count - 1) / 2], BlockExtremes.Of(ScanImage.FromGrey(scan.Width, scan.Height, scan.Codes)).Median);
    });

    // 2002 × 2003 pixels are more than a million blocks of two by two; one bright pixel survives in the block of three by three it lies in.
    [Fact]
    public void A_large_scan_has_larger_blocks_and_loses_no_speck()
    {
        var codes = new byte[2002 * 2003];
        codes[(2002 * 1999) + 1000] = 200;
        var blocks = BlockExtremes.Of(ScanImage.FromGrey(2002, 2003, codes));
        Assert.Equal((3, 668, 668), (blocks.Side, blocks.Columns, blocks.Rows));
        Assert.Equal((668 * 666) + 333, Array.IndexOf(blocks.Brightest, (byte)200));
        Assert.Equal(200, blocks.Brightest.Sum(code => code));
    }
}
