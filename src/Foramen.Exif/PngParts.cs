using System.Buffers.Binary;
using System.IO.Compression;

namespace Foramen.Exif;

/// <summary>Chunks of a PNG file (ISO/IEC 15948; eXIf as registered).</summary>
internal static class PngParts
{
    private const int SignatureLength = 8, ChunkOverhead = 12;

    public static FileParts Of(ReadOnlyMemory<byte> file)
    {
        ReadOnlyMemory<byte> exif = default, profile = default;
        var bytes = file.Span;
        for (long at = SignatureLength; at + ChunkOverhead <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[(int)at..]);
            var type = bytes.Slice((int)at + 4, 4);
            var body = file.Slice((int)at + 8, (int)Math.Min(length, bytes.Length - at - 8));
            if (type.SequenceEqual("eXIf"u8) && exif.IsEmpty)
            {
                exif = FileParts.Bounded(body);
            }
            else if (type.SequenceEqual("iCCP"u8) && profile.IsEmpty)
            {
                profile = Inflated(body);
            }
            else if (type.SequenceEqual("IEND"u8))
            {
                break;
            }

            at += length + ChunkOverhead;
        }

        return new FileParts(exif, profile);
    }

    /// <summary>An iCCP chunk: a name, a zero, the method (zero), and a zlib stream, of which no more is inflated than a profile needs.</summary>
    private static ReadOnlyMemory<byte> Inflated(ReadOnlyMemory<byte> chunk)
    {
        var nameLength = chunk.Span.IndexOf((byte)0);
        if (nameLength < 0 || nameLength + 2 > chunk.Length)
        {
            return default;
        }

        using var packed = new MemoryStream(chunk[(nameLength + 2)..].ToArray(), writable: false);
        using var stream = new ZLibStream(packed, CompressionMode.Decompress);
        using var profile = new MemoryStream();
        var buffer = new byte[16384];
        try
        {
            for (int read; profile.Length < FileParts.MostBytes && (read = stream.Read(buffer)) > 0;)
            {
                profile.Write(buffer, 0, read);
            }
        }
        catch (InvalidDataException)
        {
            // Damaged: what came out before is judged as it is, and doubted if it makes no profile.
        }

        return profile.ToArray();
    }
}
