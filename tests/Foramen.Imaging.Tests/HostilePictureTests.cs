using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Exif.Tests.TestKit;
using Foramen.Imaging.Tests.TestKit;
using Foramen.Journal.Tests.TestKit;
using SkiaSharp;

namespace Foramen.Imaging.Tests;

/// <summary>Damaged and hostile pictures: only a photograph or a refusal.</summary>
public sealed class HostilePictureTests
{
    private static readonly byte[] Sample = JpegBytes.With(
        SamplePictures.Encode(24, 16, SKEncodedImageFormat.Jpeg),
        new ExifWriter().Primary(ExifTag.Orientation, ExifValue.Word(6)).Exif(ExifTag.FNumber, ExifValue.Rational(22, 10)).Segment(),
        JpegBytes.ProfileSegment(ProfileBytes.With("Display P3", ProfileBytes.DisplayP3Columns)));

    // A damaged header may declare many pixels; what is tested here is not how long those take.
    private static readonly DecodeLimits Small = new(4, 1_000_000);

    [Fact]
    public void Every_prefix_is_read_or_refused()
    {
        for (var length = 0; length < Sample.Length; length++)
        {
            ReadOrRefused(Sample[..length]);
        }
    }

    [Fact]
    public void No_prefix_without_the_last_block_is_taken_for_whole()
    {
        var refusal = Assert.Throws<RefusalException>(() => PhotographReader.Read(Sample[..^12], "cut.jpg"));
        Assert.Contains("truncated", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_single_byte_changed_is_read_or_refused()
    {
        for (var at = 0; at < Sample.Length; at++)
        {
            foreach (var change in (ReadOnlySpan<byte>)[0x01, 0x80, 0xFF])
            {
                var damaged = Sample.ToArray();
                damaged[at] ^= change;
                ReadOrRefused(damaged);
            }
        }
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void Any_bytes_changed_are_read_or_refused(SKEncodedImageFormat format)
    {
        var sample = format == SKEncodedImageFormat.Jpeg ? Sample : SamplePictures.Encode(24, 16, format);
        Gen.Select(Gen.Int[0, sample.Length - 1], Gen.Byte).Array[1, 10].Sample(
            changes =>
            {
                var damaged = sample.ToArray();
                foreach (var (at, value) in changes)
                {
                    damaged[at] = value;
                }

                ReadOrRefused(damaged);
            },
            iter: 1000);
    }

    private static void ReadOrRefused(byte[] file)
    {
        foreach (int? least in new int?[] { null, 8 })
        {
            try
            {
                var photo = PhotographReader.Read(file, "sample.jpg", least, Small);
                Assert.Equal(4L * photo.Width * photo.Height, photo.Rgba.Length);
            }
            catch (RefusalException refusal)
            {
                Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void Damaged_pictures_end_in_a_photograph_or_a_refusal_within_bounds(SKEncodedImageFormat format)
        => Mutations.Survives([format == SKEncodedImageFormat.Jpeg ? Sample : SamplePictures.Encode(24, 16, format)], ReadOrRefused, 128_000_000, 1_000);
}
