using System.Diagnostics;
using Foramen.Engine.Quantities;
using Foramen.Exif.Tests.TestKit;
using Foramen.Imaging.Tests.TestKit;
using SkiaSharp;

namespace Foramen.Imaging.Tests;

/// <summary>What cannot be read is refused in one sentence, early, and for little.</summary>
public sealed class RefusalTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, 0.5)]
    [InlineData(SKEncodedImageFormat.Jpeg, 0.95)]
    [InlineData(SKEncodedImageFormat.Png, 0.5)]
    public void A_truncated_picture(SKEncodedImageFormat format, double share)
    {
        var whole = SamplePictures.Encode(200, 150, format);
        Refused(() => PhotographReader.Read(folder.With("cut", whole[..(int)(whole.Length * share)])), "truncated");
    }

    [Fact]
    public void A_text_file()
        => Refused(() => PhotographReader.Read(folder.With("notes.jpg", "The grain elevator at noon."u8.ToArray())), "not a photograph");

    [Fact]
    public void An_empty_file() => Refused(() => PhotographReader.Read(folder.With("empty.jpg", [])), "empty");

    [Fact]
    public void A_folder() => Refused(() => PhotographReader.Read(folder.Path), "folder");

    [Fact]
    public void A_missing_file() => Refused(() => PhotographReader.Read(folder.File("nowhere.jpg")), "no file");

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void A_name_that_cannot_be(string name) => Refused(() => PhotographReader.Read(name), "no file");

    [Fact]
    public void A_file_that_is_too_large()
        => Refused(() => PhotographReader.Read(folder.With("large.jpg", new byte[3_000_000]), limits: new DecodeLimits(120, 2_000_000)), "3 MB");

    [Fact]
    public void A_file_that_does_not_end()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "There is no endless device here.");
        Refused(() => PhotographReader.Read("/dev/zero", limits: new DecodeLimits(120, 2_000_000)), "does not end");
    }

    [Theory]
    [InlineData(20_000, 10_000, "200 megapixels")]
    [InlineData(70_000, 100, "70000 × 100")]
    public void A_picture_that_declares_too_many_pixels(int width, int height, string says)
    {
        var png = PngBytes.Of(width, height);
        var (clock, before) = (Stopwatch.StartNew(), GC.GetAllocatedBytesForCurrentThread());
        Refused(() => PhotographReader.Read(png, "bomb.png"), says);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 10);
    }

    [Fact]
    public void A_JPEG_that_declares_too_many_pixels()
    {
        // Height and width stand five bytes into the frame header, FF C0 (ITU-T T.81, B.2.2).
        var jpeg = SamplePictures.Encode(64, 64, SKEncodedImageFormat.Jpeg);
        var frame = jpeg.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xC0]);
        byte[] size = [16_000 >> 8, 16_000 & 255, 12_500 >> 8, 12_500 & 255];
        size.CopyTo(jpeg, frame + 5);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Refused(() => PhotographReader.Read(jpeg, "bomb.jpg"), "200 megapixels");
        Refused(() => PhotographReader.Read(jpeg, "bomb.jpg", leastLongSide: 100), "200 megapixels");
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
    }

    [Fact]
    public void A_JPEG_of_scans_without_end()
    {
        var jpeg = SamplePictures.Encode(64, 64, SKEncodedImageFormat.Jpeg);
        Refused(() => PhotographReader.Read([.. jpeg.AsSpan(..^2), .. Enumerable.Repeat<byte[]>([0xFF, 0xDA], 200).SelectMany(scan => scan)], "scans.jpg"), "scans");
    }

    [Theory]
    [InlineData(double.NaN, 1000)]
    [InlineData(501, 1000)]
    [InlineData(100, 3_000_000_000)]
    [InlineData(100, -1)]
    public void Limits_that_no_memory_could_hold(double megapixels, long bytes) => Refused(() => new DecodeLimits(megapixels, bytes), "between");

    private static void Refused(Func<object> act, string says)
    {
        var refusal = Assert.Throws<RefusalException>(act);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
    }
}
