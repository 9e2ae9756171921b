using System.Buffers.Binary;

namespace Foramen.Exif.Tests;

/// <summary>Resolution tags, built byte by byte from the formats' own tables.</summary>
public sealed class PictureResolutionTests
{
    private static readonly byte[] PngStart = [0x89, .. "PNG\r\n"u8, 26, 10];

    // ISO/IEC 15948, 11.3.5.3: pixels a unit across, down, unit 1 for the metre. 4800 dpi = 4800/0.0254 = 188 976.4 a metre.
    [Fact]
    public void Png_counts_pixels_by_the_metre()
    {
        var read = PictureResolution.Read(Png(188_976, 188_976, 1))!.Value;
        Assert.Equal(4800, read.Across, 0.02);
        Assert.Equal("PNG pHYs", read.Source);
        Assert.False(read.IsPlaceholder);
    }

    [Fact]
    public void Png_without_a_unit_says_only_a_shape() => Assert.Null(PictureResolution.Read(Png(3, 2, 0)));

    // ISO/IEC 10918-5: unit 1 is the inch, 2 the centimetre.
    [Theory]
    [InlineData(1, 1200, 1200)]
    [InlineData(2, 472, 1198.88)]
    public void Jfif_counts_by_the_inch_or_the_centimetre(byte unit, ushort density, double dotsPerInch)
        => Assert.Equal(dotsPerInch, PictureResolution.Read(Jfif(unit, density))!.Value.Across, 1e-6);

    [Fact]
    public void Jfif_without_a_unit_says_nothing() => Assert.Null(PictureResolution.Read(Jfif(0, 1)));

    // TIFF 6.0, section 8: XResolution 282 and YResolution 283 as ratios, ResolutionUnit 296 2 for the inch.
    [Fact]
    public void Tiff_counts_by_the_inch()
    {
        byte[] tiff =
        [
            .. "II*\0"u8, 8, 0, 0, 0, 3, 0,
            0x1A, 1, 5, 0, 1, 0, 0, 0, 50, 0, 0, 0,
            0x1B, 1, 5, 0, 1, 0, 0, 0, 50, 0, 0, 0,
            0x28, 1, 3, 0, 1, 0, 0, 0, 2, 0, 0, 0,
            0, 0, 0, 0, 0x60, 9, 0, 0, 1, 0, 0, 0,
        ];
        Assert.Equal(2400, PictureResolution.Read(tiff)!.Value.Across, 1e-9);
    }

    [Fact]
    public void Seventy_two_is_what_programs_write_where_they_do_not_know() => Assert.True(PictureResolution.Read(Jfif(1, 72))!.Value.IsPlaceholder);

    [Fact]
    public void Cut_short_or_foreign_files_say_nothing()
    {
        var png = Png(188_976, 188_976, 1);
        for (var length = 0; length < png.Length - 4; length++)
        {
            Assert.Null(PictureResolution.Read(png.AsMemory(0, length)));
        }

        Assert.Null(PictureResolution.Read("GIF89a"u8.ToArray()));
    }

    private static byte[] Png(uint across, uint down, byte unit)
    {
        var body = new byte[9];
        BinaryPrimitives.WriteUInt32BigEndian(body, across);
        BinaryPrimitives.WriteUInt32BigEndian(body.AsSpan(4), down);
        body[8] = unit;
        return [.. PngStart, 0, 0, 0, 9, .. "pHYs"u8, .. body, 0, 0, 0, 0];
    }

    private static byte[] Jfif(byte unit, ushort density)
        => [0xFF, 0xD8, 0xFF, 0xE0, 0, 16, .. "JFIF\0"u8, 1, 2, unit, (byte)(density >> 8), (byte)density, (byte)(density >> 8), (byte)density, 0, 0];
}
