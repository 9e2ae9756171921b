using System.Text;
using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Exif.Tests.TestKit;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Xmp;

namespace Foramen.Exif.Tests.Writing;

/// <summary>What is written into a picture is read back by an independent library, MetadataExtractor (its XMP by the library it brings along).</summary>
public sealed class PictureFactsWriterTests
{
    private static readonly byte[] Scan = [0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0, 1, 2, 3, 0xFF, 0, 4, 0xFF, 0xD9];

    private static readonly PictureFacts Whole = new()
    {
        Title = "The grain elevator",
        ExposureTime = Engine.Quantities.Duration.FromSeconds(95.5),
        FNumber = FNumber.FromValue(180),
        FocalDistance = Length.FromMillimetres(63),
        OpenedAt = new DateTimeOffset(2026, 5, 9, 15, 32, 7, TimeSpan.FromHours(2)),
        Place = GeographicPosition.FromDegrees(52.123456, -4.9876543),
    };

    public static TheoryData<string> Formats => ["jpeg", "png"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Another_reader_finds_every_fact(string format)
    {
        var directories = Read(PictureFactsWriter.Write(Empty(format), Whole));
        var shot = directories.OfType<ExifSubIfdDirectory>().Single();
        Assert.Equal(95.5, shot.GetRational(ExifDirectoryBase.TagExposureTime).ToDouble());
        Assert.Equal(180, shot.GetRational(ExifDirectoryBase.TagFNumber).ToDouble());
        Assert.Equal(63, shot.GetRational(ExifDirectoryBase.TagFocalLength).ToDouble());
        Assert.Equal("2026:05:09 15:32:07", shot.GetString(ExifDirectoryBase.TagDateTimeOriginal));
        Assert.Equal("+02:00", shot.GetString(0x9011));
        Assert.Equal("The grain elevator", directories.OfType<ExifIfd0Directory>().Single().GetString(ExifDirectoryBase.TagImageDescription));
        var place = directories.OfType<GpsDirectory>().Single().GetGeoLocation()!;
        Assert.Equal(52.123456, place.Latitude, 1e-6);
        Assert.Equal(-4.9876543, place.Longitude, 1e-6);
        var xmp = directories.OfType<XmpDirectory>().Single().GetXmpProperties();
        Assert.Equal("95500/1000", xmp["exif:ExposureTime"]);
        Assert.Equal("18000/100", xmp["exif:FNumber"]);
        Assert.Equal("2026-05-09T15:32:07+02:00", xmp["exif:DateTimeOriginal"]);
        Assert.Equal("52,7.4074N", xmp["exif:GPSLatitude"]);
        Assert.Equal("4,59.2593W", xmp["exif:GPSLongitude"]);
        Assert.Equal("The grain elevator", xmp["dc:title[1]"]);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void No_place_goes_out_that_was_not_asked_for_not_even_the_phones_own(string format)
    {
        var phone = PictureFactsWriter.Write(Empty(format), Whole);
        var written = PictureFactsWriter.Write(phone, Whole with { Place = null });
        Assert.Empty(Read(written).OfType<GpsDirectory>());
        Assert.DoesNotContain("GPS", Encoding.Latin1.GetString(written), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Written_again_it_is_the_same_file(string format)
    {
        var once = PictureFactsWriter.Write(Empty(format), Whole);
        Assert.Equal(once, PictureFactsWriter.Write(once, Whole));
    }

    [Fact]
    public void Any_exposure_comes_back_to_a_thousandth_of_itself()
        => Gen.Select(Gen.Double[-3, 5], Gen.Double[0.3, 3.5]).Sample((lgSeconds, lgNumber) =>
        {
            var facts = new PictureFacts { ExposureTime = Engine.Quantities.Duration.FromSeconds(Math.Pow(10, lgSeconds)), FNumber = FNumber.FromValue(Math.Pow(10, lgNumber)) };
            var shot = Read(PictureFactsWriter.Write(Empty("jpeg"), facts)).OfType<ExifSubIfdDirectory>().Single();
            Assert.InRange(shot.GetRational(ExifDirectoryBase.TagExposureTime).ToDouble() / facts.ExposureTime.Value.Seconds, 0.999, 1.001);
            Assert.InRange(shot.GetRational(ExifDirectoryBase.TagFNumber).ToDouble() / facts.FNumber.Value.Value, 0.999, 1.001);
        });

    [Fact]
    public void The_picture_and_its_turn_and_its_profile_stay()
    {
        var head = JpegBytes.Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 0, 0, 1, 0, 1, 0, 0]);
        var profile = JpegBytes.ProfileSegment([1, 2, 3, 4]);
        var turned = new ExifWriter().Primary(ExifTag.Orientation, ExifValue.Word(6)).Segment();
        byte[] file = [0xFF, 0xD8, .. head, .. turned, .. profile, .. Scan];
        var written = PictureFactsWriter.Write(file, Whole);
        Assert.Equal(6, PhotographFactsReader.Read(written).Orientation);
        Assert.Equal(head, written[2..(2 + head.Length)]);
        Assert.Equal([.. profile, .. Scan], written[^(profile.Length + Scan.Length)..]);
    }

    [Fact]
    public void Of_a_png_all_chunks_that_draw_stay()
    {
        var file = PngBytes.Of(3, 2, ("gAMA", [0, 0, 177, 143]), ("tEXt", [.. "Comment\0at home"u8]));
        var written = PictureFactsWriter.Write(file, Whole);
        Assert.DoesNotContain("at home", Encoding.Latin1.GetString(written), StringComparison.Ordinal);
        Assert.Equal(["IHDR", "eXIf", "iTXt", "gAMA", "IDAT", "IEND"], Chunks(written));
    }

    [Theory]
    [InlineData("GIF89a")]
    [InlineData("")]
    public void Another_format_is_refused(string begin)
        => Assert.Contains("neither a JPEG nor a PNG", Assert.Throws<RefusalException>(() => PictureFactsWriter.Write(Encoding.ASCII.GetBytes(begin), Whole)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_file_cut_anywhere_in_its_head_is_refused_in_a_sentence()
    {
        foreach (var whole in new[] { Empty("jpeg")[..^Scan.Length], PngBytes.Of(3, 2) })
        {
            for (var length = 8; length < whole.Length; length++)
            {
                Assert.EndsWith(".", Assert.Throws<RefusalException>(() => PictureFactsWriter.Write(whole.AsMemory(0, length), Whole)).Message, StringComparison.Ordinal);
            }
        }
    }

    private static byte[] Empty(string format) => format == "png"
        ? PngBytes.Of(3, 2)
        : [0xFF, 0xD8, .. JpegBytes.Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 0, 0, 1, 0, 1, 0, 0]), .. JpegBytes.Segment(0xFE, "a comment"u8), .. Scan];

    private static IReadOnlyList<MetadataExtractor.Directory> Read(byte[] file) => ImageMetadataReader.ReadMetadata(new MemoryStream(file));

    private static List<string> Chunks(byte[] png)
    {
        var types = new List<string>();
        for (var at = 8; at + 12 <= png.Length;)
        {
            types.Add(Encoding.ASCII.GetString(png, at + 4, 4));
            at += 12 + System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
        }

        return types;
    }
}
