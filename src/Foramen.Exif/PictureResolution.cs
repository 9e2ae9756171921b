using System.Buffers.Binary;

namespace Foramen.Exif;

/// <summary>How many pixels to the inch a file says its picture has, and where it says so.</summary>
/// <param name="Across">Pixels to the inch of 25.4 mm, from left to right.</param>
/// <param name="Down">Pixels to the inch from top to bottom.</param>
/// <param name="Source">The part of the file that says so.</param>
public readonly record struct PictureResolution(double Across, double Down, string Source)
{
    /// <summary>
    /// At or below this many a tag is no measurement: programs and phones write 72 or 96 where they do not know (Exif 2.3 prescribes 72 then). No hole is scanned so
    /// coarsely.
    /// </summary>
    public const double MostOfAPlaceholder = 150;

    private const double MillimetresPerInch = 25.4;
    private const ushort AcrossTag = 0x011A, DownTag = 0x011B, UnitTag = 0x0128;
    private const long Centimetres = 3;

    /// <summary>Whether the tag is what programs write where they do not know.</summary>
    public bool IsPlaceholder => Math.Max(Across, Down) <= MostOfAPlaceholder;

    /// <summary>What a PNG (pHYs, ISO/IEC 15948), a JPEG (JFIF, ISO/IEC 10918-5, else Exif) or a TIFF (TIFF 6.0, section 8) says; null if nothing usable.</summary>
    /// <param name="file">The whole file, or its head.</param>
    public static PictureResolution? Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var own = bytes.StartsWith((ReadOnlySpan<byte>)[0x89, .. "PNG\r\n"u8, 26, 10]) ? OfPng(bytes)
            : bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]) ? OfJfif(bytes)
            : null;
        return own ?? OfTiff(FileParts.Of(file).Exif);
    }

    private static PictureResolution? OfPng(ReadOnlySpan<byte> bytes)
    {
        for (long at = 8; at + 12 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[(int)at..]);
            var type = bytes.Slice((int)at + 4, 4);
            if (type.SequenceEqual("pHYs"u8) && length == 9 && at + 21 <= bytes.Length)
            {
                var body = bytes.Slice((int)at + 8, 9);
                return body[8] == 1
                    ? Usable(
                        BinaryPrimitives.ReadUInt32BigEndian(body) * MillimetresPerInch / 1000,
                        BinaryPrimitives.ReadUInt32BigEndian(body[4..]) * MillimetresPerInch / 1000,
                        "PNG pHYs")
                    : null;
            }

            if (type.SequenceEqual("IDAT"u8))
            {
                return null;
            }

            at += length + 12;
        }

        return null;
    }

    private static PictureResolution? OfJfif(ReadOnlySpan<byte> bytes)
    {
        // The JFIF segment comes first: FF E0, length, "JFIF\0", version, unit, density across and down.
        if (bytes.Length < 18 || bytes[2] != 0xFF || bytes[3] != 0xE0 || !bytes[6..].StartsWith("JFIF\0"u8))
        {
            return null;
        }

        var scale = bytes[13] switch { 1 => 1, 2 => MillimetresPerInch / 10, _ => 0 };
        return Usable(BinaryPrimitives.ReadUInt16BigEndian(bytes[14..]) * scale, BinaryPrimitives.ReadUInt16BigEndian(bytes[16..]) * scale, "JFIF");
    }

    private static PictureResolution? OfTiff(ReadOnlyMemory<byte> tiff)
    {
        if (tiff.IsEmpty || TiffDirectory.First(tiff) is not { } first)
        {
            return null;
        }

        var scale = first[UnitTag]?.Integer == Centimetres ? MillimetresPerInch / 10 : 1;
        double Of(ushort tag) => first[tag]?.Ratio is { Under: not 0 } ratio ? ratio.Over / (double)ratio.Under * scale : 0;
        return Usable(Of(AcrossTag), Of(DownTag), "TIFF tags");
    }

    private static PictureResolution? Usable(double across, double down, string source)
        => across is > 0 and < 1e6 && down is > 0 and < 1e6 ? new PictureResolution(across, down, source) : null;
}
