using System.Buffers.Binary;
using System.IO.Hashing;
using Foramen.Engine.Quantities;

namespace Foramen.Exif;

/// <summary>
/// Puts facts into a picture file: Exif (CIPA DC-008) and XMP (ISO 16684-1) in place of all that the file said of itself, so that nothing of a phone's own record (where it was
/// photographed, above all) goes out with it. The picture itself, its colour profile and how it is turned stay as they were.
/// </summary>
public static class PictureFactsWriter
{
    private const byte StartOfScan = 0xDA, EndOfImage = 0xD9, Comment = 0xFE;
    private const byte Application1 = 0xE1, Application13 = 0xED;
    private const int MostInSegment = 65533;
    private const int SignatureLength = 8, ChunkOverhead = 12;

    /// <summary>Texts and times that a PNG file may hold, and Exif.</summary>
    private static readonly HashSet<string> Replaced = ["eXIf", "tEXt", "zTXt", "iTXt", "tIME"];

    /// <summary>The file with the facts in it.</summary>
    /// <param name="file">A whole JPEG or PNG file.</param>
    /// <param name="facts">What to write.</param>
    /// <exception cref="RefusalException">Another format, or a damaged file.</exception>
    public static byte[] Write(ReadOnlyMemory<byte> file, PictureFacts facts)
    {
        var (exif, xmp) = (ExifBlock.Of(facts, PhotographFactsReader.Read(file).Orientation), XmpPacket.Of(facts));
        var bytes = file.Span;
        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]) ? IntoJpeg(bytes, exif, xmp)
            : bytes.StartsWith((ReadOnlySpan<byte>)[0x89, .. "PNG\r\n"u8, 26, 10]) ? IntoPng(bytes, exif, xmp)
            : throw new RefusalException("This picture is neither a JPEG nor a PNG file, so nothing can be written into it; save it as one of these first.");
    }

    private static byte[] IntoJpeg(ReadOnlySpan<byte> file, byte[] exif, byte[] xmp)
    {
        using var written = new MemoryStream(file.Length + exif.Length + xmp.Length + 64);
        written.Write(file[..2]);

        // A file's own head (APP0) has to come first where there is one.
        var at = 2;
        if (file.Length > 6 && file[2] == 0xFF && file[3] == 0xE0)
        {
            at = Segment(file, at, out _);
            written.Write(file[2..at]);
        }

        WriteSegment(written, [.. "Exif\0\0"u8, .. exif]);
        WriteSegment(written, [.. "http://ns.adobe.com/xap/1.0/\0"u8, .. xmp]);
        while (true)
        {
            var next = Segment(file, at, out var marker);
            if (marker is StartOfScan or EndOfImage)
            {
                written.Write(file[at..]);
                return written.ToArray();
            }

            if (marker is not (Application1 or Application13 or Comment))
            {
                written.Write(file[at..next]);
            }

            at = next;
        }
    }

    /// <summary>Where the segment after this one begins; for the start of the picture itself, this one.</summary>
    private static int Segment(ReadOnlySpan<byte> file, int at, out byte marker)
    {
        while (at + 1 < file.Length && file[at] == 0xFF && file[at + 1] == 0xFF)
        {
            at++;
        }

        if (at + 4 > file.Length && !(at + 2 <= file.Length && file[at + 1] == EndOfImage))
        {
            throw Damaged();
        }

        marker = file[at] == 0xFF ? file[at + 1] : throw Damaged();
        if (marker is StartOfScan or EndOfImage)
        {
            return at;
        }

        var length = marker is 0x01 or (>= 0xD0 and <= 0xD7) ? 0 : BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
        return at + 2 + length < file.Length ? at + 2 + length : throw Damaged();
    }

    private static void WriteSegment(MemoryStream written, ReadOnlySpan<byte> body)
    {
        if (body.Length > MostInSegment)
        {
            throw new RefusalException("The title is too long to be written into a picture; make it shorter.");
        }

        written.Write([0xFF, Application1, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 255)]);
        written.Write(body);
    }

    private static byte[] IntoPng(ReadOnlySpan<byte> file, byte[] exif, byte[] xmp)
    {
        using var written = new MemoryStream(file.Length + exif.Length + xmp.Length + 64);
        written.Write(file[..SignatureLength]);
        for (var at = SignatureLength; ;)
        {
            var length = at + ChunkOverhead <= file.Length ? BinaryPrimitives.ReadUInt32BigEndian(file[at..]) : uint.MaxValue;
            if (length > file.Length - at - ChunkOverhead)
            {
                throw Damaged();
            }

            var next = at + (int)length + ChunkOverhead;
            var type = System.Text.Encoding.ASCII.GetString(file.Slice(at + 4, 4));
            if (!Replaced.Contains(type))
            {
                written.Write(file[at..next]);
            }

            if (type == "IHDR")
            {
                WriteChunk(written, "eXIf"u8, exif);

                // Keyword, no compression, no language, no translated keyword (ISO 16684-3 names the keyword).
                WriteChunk(written, "iTXt"u8, [.. "XML:com.adobe.xmp\0\0\0\0\0"u8, .. xmp]);
            }

            if (type == "IEND")
            {
                return written.ToArray();
            }

            at = next;
        }
    }

    private static void WriteChunk(MemoryStream written, ReadOnlySpan<byte> type, byte[] body)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(number, (uint)body.Length);
        written.Write(number);
        var check = new Crc32();
        check.Append(type);
        check.Append(body);
        written.Write(type);
        written.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, check.GetCurrentHashAsUInt32());
        written.Write(number);
    }

    private static RefusalException Damaged() => new("This picture file is damaged or cut short, so nothing was written into it; choose a whole one.");
}
