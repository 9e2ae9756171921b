using BitMiracle.LibTiff.Classic;
using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Imaging.Tests.TestKit;
using SkiaSharp;

namespace Foramen.Imaging.Tests;

/// <summary>What is written can be read back, equal, by the libraries of others.</summary>
public sealed class PrintWriterTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_PNG_reads_back_equal()
        => Gen.Select(Gen.Int[1, 70], Gen.Int[1, 70]).SelectMany((width, height) => Gen.Byte.Array[width * height].Select(codes => (width, height, codes))).Sample(
            print =>
            {
                using var stream = new MemoryStream();
                PrintWriter.EncodePng(stream, print.codes, print.width, print.height);
                using var bitmap = SKBitmap.Decode(stream.ToArray());

                Assert.Equal((print.width, print.height, SKColorType.Gray8), (bitmap.Width, bitmap.Height, bitmap.ColorType));
                Assert.Equal(print.codes, Enumerable.Range(0, print.codes.Length).Select(at => bitmap.GetPixel(at % print.width, at / print.width).Red));
            },
            iter: 50);

    [Theory]
    [InlineData(1, 1)]
    [InlineData(37, 64)]
    [InlineData(130, 65)]
    public void A_TIFF_reads_back_equal(int width, int height)
    {
        // A step of 40503 (near 65536 over the golden ratio) runs through codes of all sizes.
        var linear = Enumerable.Range(0, width * height).Select(at => (ushort)(at * 40503)).ToArray();
        PrintWriter.WriteTiff(folder.File("print.tif"), linear, width, height);
        using var tiff = Tiff.Open(folder.File("print.tif"), "r");

        Assert.Equal((width, height), (tiff.GetField(TiffTag.IMAGEWIDTH)[0].ToInt(), tiff.GetField(TiffTag.IMAGELENGTH)[0].ToInt()));
        Assert.Equal((16, 1), (tiff.GetField(TiffTag.BITSPERSAMPLE)[0].ToInt(), tiff.GetField(TiffTag.SAMPLESPERPIXEL)[0].ToInt()));
        Assert.Equal((int)Photometric.MINISBLACK, tiff.GetField(TiffTag.PHOTOMETRIC)[0].ToInt());
        var row = new byte[2 * width];
        for (var y = 0; y < height; y++)
        {
            Assert.True(tiff.ReadScanline(row, y));
            Assert.Equal(linear[(y * width)..((y + 1) * width)], Enumerable.Range(0, width).Select(x => BitConverter.ToUInt16(row, 2 * x)));
        }

        Assert.Equal(["print.tif"], folder.Names);
    }

    [Theory]
    [InlineData(3, 3)]
    [InlineData(0, 0)]
    [InlineData(-2, -4)]
    [InlineData(8, 1_000_000)]
    public void A_size_that_the_values_do_not_fill_is_refused(int width, int height)
    {
        Assert.Throws<RefusalException>(() => PrintWriter.WritePng(folder.File("print.png"), new byte[8], width, height));
        Assert.Throws<RefusalException>(() => PrintWriter.WriteTiff(folder.File("print.tif"), new ushort[8], width, height));
        Assert.Empty(folder.Names);
    }
}
