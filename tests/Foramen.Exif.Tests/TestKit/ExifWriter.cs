namespace Foramen.Exif.Tests.TestKit;

/// <summary>Builds Exif as CIPA DC-008 lays it out: a TIFF header, IFD0, and the Exif IFD that IFD0 points to.</summary>
public sealed class ExifWriter
{
    private readonly SortedDictionary<ushort, ExifValue> primary = [];
    private readonly SortedDictionary<ushort, ExifValue> exif = [];

    /// <summary>Whether numbers are written big end first ("MM").</summary>
    public bool BigEndian { get; init; }

    /// <summary>A value in IFD0.</summary>
    public ExifWriter Primary(ushort tag, ExifValue value)
    {
        primary[tag] = value;
        return this;
    }

    /// <summary>A value in the Exif IFD.</summary>
    public ExifWriter Exif(ushort tag, ExifValue value)
    {
        exif[tag] = value;
        return this;
    }

    /// <summary>The TIFF structure alone.</summary>
    public byte[] Tiff()
    {
        primary[ExifTag.ExifDirectory] = ExifValue.DoubleWord(0);
        var exifOffset = 8 + Directory(primary, 8).Length;
        primary[ExifTag.ExifDirectory] = ExifValue.DoubleWord((uint)exifOffset);
        byte[] header = BigEndian ? [.. "MM"u8, 0, 42, 0, 0, 0, 8] : [.. "II"u8, 42, 0, 8, 0, 0, 0];
        return [.. header, .. Directory(primary, 8), .. Directory(exif, exifOffset)];
    }

    /// <summary>The APP1 segment of a JPEG.</summary>
    public byte[] Segment() => JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. Tiff()]);

    private byte[] Directory(SortedDictionary<ushort, ExifValue> entries, int offset)
    {
        var (head, beyond) = (new List<byte>(), new List<byte>());
        var beyondOffset = offset + 2 + (12 * entries.Count) + 4;
        head.AddRange(Number((ushort)entries.Count));
        foreach (var (tag, value) in entries)
        {
            var bytes = value.Bytes(BigEndian);
            head.AddRange(Number(tag));
            head.AddRange(Number(value.Type));
            head.AddRange(Number(value.Count));
            if (bytes.Length <= 4)
            {
                head.AddRange([.. bytes, .. new byte[4 - bytes.Length]]);
                continue;
            }

            head.AddRange(Number((uint)(beyondOffset + beyond.Count)));
            beyond.AddRange(bytes);
            beyond.AddRange(new byte[bytes.Length % 2]);
        }

        return [.. head, .. Number(0u), .. beyond];
    }

    private byte[] Number(ushort value) => ExifValue.Ordered(BitConverter.GetBytes(value), BigEndian);

    private byte[] Number(uint value) => ExifValue.Ordered(BitConverter.GetBytes(value), BigEndian);
}
