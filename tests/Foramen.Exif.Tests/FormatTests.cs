using Foramen.Engine.Scene;
using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests;

public sealed class FormatTests
{
    private static readonly ExifWriter Exif = new ExifWriter()
        .Primary(ExifTag.Orientation, ExifValue.Word(6))
        .Exif(ExifTag.ExposureTime, ExifValue.Rational(1, 250))
        .Exif(ExifTag.FNumber, ExifValue.Rational(18, 10))
        .Exif(ExifTag.PhotographicSensitivity, ExifValue.Word(64));

    private static readonly byte[] Profile = ProfileBytes.With("8a2f", ProfileBytes.DisplayP3Columns);

    [Fact]
    public void A_PNG_has_them_in_chunks()
    {
        var packed = new MemoryStream();
        using (var deflate = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.Optimal, leaveOpen: true))
        {
            deflate.Write(Profile);
        }

        HasAll(PhotographFactsReader.Read(PngBytes.Of(8, 8, ("iCCP", [(byte)'p', 0, 0, .. packed.ToArray()]), ("eXIf", Exif.Tiff()))), 6);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_WebP_has_them_in_chunks(bool withHead)
    {
        byte[] exif = withHead ? [.. "Exif\0\0"u8, .. Exif.Tiff()] : Exif.Tiff();
        HasAll(PhotographFactsReader.Read((byte[])[.. "RIFF"u8, 0, 0, 0, 0, .. "WEBP"u8, .. Chunk("VP8X", new byte[10]), .. Chunk("ICCP", Profile), .. Chunk("EXIF", exif)]), 6);
    }

    [Fact]
    public void A_HEIF_has_them_in_boxes_and_keeps_its_turn_itself()
    {
        byte[] file =
        [
            0, 0, 0, 16, .. "ftypheic"u8, 0, 0, 0, 0, 0, 0, 0, 0, .. "meta"u8, .. new byte[40], 0, 0, 0, 0, .. "colrprof"u8, .. Profile,
            0, 0, 0, 0, .. "mdat"u8, 0, 0, 0, 6, .. "Exif\0\0"u8, .. Exif.Tiff(),
        ];
        HasAll(PhotographFactsReader.Read(file), 1);
    }

    [Fact]
    public void A_TIFF_is_its_own_Exif()
    {
        var facts = PhotographFactsReader.Read(Exif.Tiff());
        Assert.Equal(64, facts.Speed!.Value.Iso);
        Assert.Equal(6, facts.Orientation);
    }

    [Fact]
    public void Exif_that_points_nowhere_is_doubted()
    {
        var tiff = Exif.Tiff();
        var cut = tiff.AsSpan(0, 40).ToArray();
        var facts = PhotographFactsReader.Read(JpegBytes.Only(JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. cut])));

        Assert.False(facts.HasExposure);
        Assert.Contains("damaged", Assert.Single(facts.Doubts), StringComparison.Ordinal);
    }

    private static byte[] Chunk(string type, byte[] body)
        => [.. System.Text.Encoding.ASCII.GetBytes(type), .. BitConverter.GetBytes(body.Length), .. body, .. new byte[body.Length % 2]];

    private static void HasAll(PhotographFacts facts, int orientation)
    {
        Assert.Equal(1 / 250.0, facts.ExposureTime!.Value.Seconds, 1e-12);
        Assert.Equal(1.8, facts.FNumber!.Value.Value, 1e-12);
        Assert.Equal(64, facts.Speed!.Value.Iso);
        Assert.Equal(PhotographColour.DisplayP3, facts.Colour);
        Assert.Equal(orientation, facts.Orientation);
        Assert.Empty(facts.Doubts);
    }
}
