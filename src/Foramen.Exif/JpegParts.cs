using System.Buffers.Binary;

namespace Foramen.Exif;

/// <summary>Marker segments of a JPEG file before its picture (ITU-T T.81, annex B).</summary>
internal static class JpegParts
{
    private const byte StartOfScan = 0xDA, EndOfImage = 0xD9, Application1 = 0xE1, Application2 = 0xE2;

    public static FileParts Of(ReadOnlyMemory<byte> file)
    {
        ReadOnlyMemory<byte> exif = default;
        var profile = new List<(byte Number, ReadOnlyMemory<byte> Part)>();
        var bytes = file.Span;
        for (var at = 2; at + 4 <= bytes.Length && bytes[at] == 0xFF;)
        {
            var marker = bytes[at + 1];
            if (marker is 0xFF or 0x01 or (>= 0xD0 and <= 0xD7))
            {
                // Fill bytes, and markers that stand alone.
                at += marker == 0xFF ? 1 : 2;
                continue;
            }

            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
            if (marker is StartOfScan or EndOfImage || length < 2)
            {
                break;
            }

            var body = file.Slice(at + 4, Math.Min(length - 2, bytes.Length - at - 4));
            if (marker == Application1 && exif.IsEmpty && body.Span.StartsWith("Exif\0"u8) && body.Length > 6)
            {
                exif = body[6..];
            }
            else if (marker == Application2 && body.Span.StartsWith("ICC_PROFILE\0"u8) && body.Length > 14 && profile.Count < byte.MaxValue)
            {
                profile.Add((body.Span[12], body[14..]));
            }

            at += 2 + length;
        }

        return new FileParts(exif, Joined(profile));
    }

    /// <summary>A long profile comes in numbered parts (ICC.1:2010, annex B.4).</summary>
    private static ReadOnlyMemory<byte> Joined(List<(byte Number, ReadOnlyMemory<byte> Part)> parts)
    {
        if (parts.Count == 1)
        {
            return parts[0].Part;
        }

        var joined = new byte[Math.Min(FileParts.MostBytes, parts.Sum(part => part.Part.Length))];
        var at = 0;
        foreach (var (_, part) in parts.OrderBy(part => part.Number))
        {
            var fits = Math.Min(part.Length, joined.Length - at);
            part[..fits].CopyTo(joined.AsMemory(at));
            at += fits;
        }

        return joined;
    }
}
