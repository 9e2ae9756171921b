using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Foramen.Exif.Tests.TestKit;

/// <summary>Black grey PNG files (ISO/IEC 15948) with any size in their header and any chunks before the picture.</summary>
public static class PngBytes
{
    /// <summary>A file; the rows are there only where the size is small.</summary>
    public static byte[] Of(int width, int height, params (string Type, byte[] Body)[] chunks)
    {
        byte[] header = [.. Number((uint)width), .. Number((uint)height), 8, 0, 0, 0, 0];
        var rows = (long)width * height < 1_000_000 ? new byte[height * (width + 1)] : [];
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            deflate.Write(rows);
        }

        return
        [
            0x89, .. "PNG\r\n"u8, 26, 10, .. Chunk("IHDR", header), .. chunks.SelectMany(chunk => Chunk(chunk.Type, chunk.Body)),
            .. Chunk("IDAT", packed.ToArray()), .. Chunk("IEND", []),
        ];
    }

    /// <summary>A file with a chunk put behind its header.</summary>
    public static byte[] With(byte[] png, string type, byte[] body) => [.. png.AsSpan(0, 33), .. Chunk(type, body), .. png.AsSpan(33)];

    private static byte[] Chunk(string type, byte[] body)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(type), .. body];
        return [.. Number((uint)body.Length), .. named, .. Number(Crc(named))];
    }

    /// <summary>CRC-32 as annex D of the standard gives it.</summary>
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }

    private static byte[] Number(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, value);
        return bytes;
    }
}
