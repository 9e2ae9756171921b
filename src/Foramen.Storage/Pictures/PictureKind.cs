namespace Foramen.Storage.Pictures;

/// <summary>
/// Tells a picture by its first bytes, never by its name or what someone calls it. SVG is not among them: it can hold scripts. The signatures are those of
/// ITU-T T.81 (JPEG), ISO/IEC 15948 (PNG), RFC 9649 (WebP), TIFF 6.0 and ISO/IEC 23008-12 (HEIF).
/// </summary>
public static class PictureKind
{
    /// <summary>How many bytes are enough.</summary>
    public const int BytesNeeded = 16;

    /// <summary>The media type, or null where it is no picture that is kept.</summary>
    public static string? MediaTypeOf(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
        {
            return "image/jpeg";
        }

        if (head.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]))
        {
            return "image/png";
        }

        if (head.Length >= 12 && head.StartsWith("RIFF"u8) && head[8..12].SequenceEqual("WEBP"u8))
        {
            return "image/webp";
        }

        if (head.StartsWith("II*\0"u8) || head.StartsWith("MM\0*"u8))
        {
            return "image/tiff";
        }

        return head.Length >= 12 && head[4..8].SequenceEqual("ftyp"u8)
            && (head[8..12].SequenceEqual("heic"u8) || head[8..12].SequenceEqual("heix"u8) || head[8..12].SequenceEqual("mif1"u8) || head[8..12].SequenceEqual("avif"u8))
            ? "image/heif"
            : null;
    }
}
