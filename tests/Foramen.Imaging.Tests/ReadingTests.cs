using Foramen.Engine.Scene;
using Foramen.Exif.Tests.TestKit;
using Foramen.Imaging.Tests.TestKit;
using SkiaSharp;

namespace Foramen.Imaging.Tests;

public sealed class ReadingTests
{
    [Fact]
    public void A_PNG_named_jpg_is_read_with_a_doubt()
    {
        var photo = PhotographReader.Read(SamplePictures.Encode(40, 30, SKEncodedImageFormat.Png), "basin.jpg");

        Assert.Equal((40, 30), (photo.Width, photo.Height));
        Assert.Equal("basin.jpg is named JPG but holds a PNG picture; it was read as that.", Assert.Single(photo.Facts.Doubts));
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, "basin.JPEG")]
    [InlineData(SKEncodedImageFormat.Png, "basin.png")]
    [InlineData(SKEncodedImageFormat.Webp, "basin.webp")]
    [InlineData(SKEncodedImageFormat.Webp, "basin")]
    public void A_picture_under_its_own_name_is_not_doubted(SKEncodedImageFormat format, string name)
        => Assert.Empty(PhotographReader.Read(SamplePictures.Encode(40, 30, format), name).Facts.Doubts);

    [Fact]
    public void Codes_stay_those_of_the_file_whatever_its_colours()
    {
        var (srgb, p3) = (PhotographReader.Read(SamplePictures.Encode(40, 30, SKEncodedImageFormat.Png), "a.png"), PhotographReader.Read(
            SamplePictures.Encode(40, 30, SKEncodedImageFormat.Png, SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3)), "b.png"));

        Assert.Equal(PhotographColour.Srgb, srgb.Facts.Colour);
        Assert.Equal(PhotographColour.DisplayP3, p3.Facts.Colour);
        Assert.Empty(p3.Facts.Doubts);
        Assert.Equal(srgb.Rgba.ToArray(), p3.Rgba.ToArray());
    }

    [Theory]
    [InlineData(100)]
    [InlineData(101)]
    [InlineData(399)]
    [InlineData(400)]
    [InlineData(799)]
    [InlineData(800)]
    [InlineData(5000)]
    public void A_smaller_decoding_still_holds_the_size_asked_for(int least)
    {
        var photo = PhotographReader.Read(SamplePictures.Encode(800, 600, SKEncodedImageFormat.Jpeg), "basin.jpg", least);

        // Eighths of 800 are a hundred pixels apart.
        Assert.InRange(photo.Width, Math.Min(800, least), Math.Min(800, least + 99));
        Assert.Equal(0.75, photo.Height / (double)photo.Width, 0.01);
    }

    [Fact]
    public void A_photograph_on_its_side_asks_for_its_long_side()
    {
        var jpeg = JpegBytes.With(
            SamplePictures.Encode(800, 600, SKEncodedImageFormat.Jpeg), new ExifWriter().Primary(ExifTag.Orientation, ExifValue.Word(6)).Segment());
        var photo = PhotographReader.Read(jpeg, "basin.jpg", 400);

        Assert.Equal((300, 400), (photo.Width, photo.Height));
    }

    [Fact]
    public void Reading_takes_the_memory_of_the_picture_and_little_more()
    {
        var jpeg = SamplePictures.Encode(2000, 1500, SKEncodedImageFormat.Jpeg);
        PhotographReader.Read(jpeg, "warm.jpg");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var photo = PhotographReader.Read(jpeg, "basin.jpg");

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, photo.Rgba.Length, photo.Rgba.Length + 200_000);
    }
}
