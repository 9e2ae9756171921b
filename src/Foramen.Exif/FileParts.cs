namespace Foramen.Exif;

/// <summary>
/// The two parts of an image file that say how it was taken: its Exif (a TIFF structure) and its ICC profile. Empty where there is none. Finding them walks the
/// file's own chain of blocks once, never inflates more than <see cref="MostBytes"/>, and never decodes a pixel.
/// </summary>
/// <param name="Exif">The TIFF structure, from its byte-order mark on.</param>
/// <param name="Profile">The ICC profile.</param>
internal readonly record struct FileParts(ReadOnlyMemory<byte> Exif, ReadOnlyMemory<byte> Profile)
{
    /// <summary>More than this is not read of either: a JPEG can hold 64 KB of Exif, and profiles for RGB are smaller than a megabyte.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>
    /// Whether the format keeps the turn of the picture itself, so that the orientation in its Exif is for information only (ISO/IEC 23008-12, annex A).
    /// </summary>
    public bool KeepsTurnItself { get; init; }

    /// <summary>Finds the parts by what the file holds, whatever its name.</summary>
    public static FileParts Of(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]) ? JpegParts.Of(file)
            : bytes.StartsWith((ReadOnlySpan<byte>)[0x89, .. "PNG\r\n"u8, 26, 10]) ? PngParts.Of(file)
            : bytes.StartsWith("RIFF"u8) && bytes.Length >= 12 && bytes[8..].StartsWith("WEBP"u8) ? WebpParts.Of(file)
            : bytes.StartsWith("II*\0"u8) || bytes.StartsWith("MM\0*"u8) ? new FileParts(file, default)
            : bytes.Length >= 12 && bytes[4..].StartsWith("ftyp"u8) ? HeifParts.Of(file)
            : default;
    }

    /// <summary>At most <see cref="MostBytes"/> of it.</summary>
    public static ReadOnlyMemory<byte> Bounded(ReadOnlyMemory<byte> part) => part[..Math.Min(part.Length, MostBytes)];
}
