using System.Buffers.Binary;

namespace Foramen.Exif;

/// <summary>Chunks of a WebP file (RFC 9649).</summary>
internal static class WebpParts
{
    private const int HeaderLength = 12;

    public static FileParts Of(ReadOnlyMemory<byte> file)
    {
        ReadOnlyMemory<byte> exif = default, profile = default;
        var bytes = file.Span;
        for (long at = HeaderLength; at + 8 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32LittleEndian(bytes[((int)at + 4)..]);
            var type = bytes.Slice((int)at, 4);
            var body = FileParts.Bounded(file.Slice((int)at + 8, (int)Math.Min(length, bytes.Length - at - 8)));
            if (type.SequenceEqual("EXIF"u8) && exif.IsEmpty)
            {
                // Some writers keep the head that a JPEG would need.
                exif = body.Span.StartsWith("Exif\0\0"u8) ? body[6..] : body;
            }
            else if (type.SequenceEqual("ICCP"u8) && profile.IsEmpty)
            {
                profile = body;
            }

            at += 8 + length + (length % 2);
        }

        return new FileParts(exif, profile);
    }
}
