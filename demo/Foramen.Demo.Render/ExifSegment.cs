using System.Buffers.Binary;
using System.Text;

namespace Foramen.Demo.Render;

/// <summary>Builds the Exif APP1 segment of a JPEG (CIPA DC-008): little-endian TIFF with IFD0 and the Exif IFD.</summary>
internal sealed class ExifSegment
{
    private const ushort Ascii = 2, Short = 3, Long = 4, Rational = 5;
    private readonly SortedDictionary<ushort, (ushort Type, uint Count, byte[] Value)> primary = [];
    private readonly SortedDictionary<ushort, (ushort Type, uint Count, byte[] Value)> exif = [];

    public static byte[] For(Shot shot)
    {
        var segment = new ExifSegment();
        segment.primary[0x0112] = Word(1);
        segment.exif[0x829A] = Ratio(1, (uint)shot.TimeDenominator);
        segment.exif[0x829D] = Ratio((uint)shot.FNumberTimesTen, 10);
        segment.exif[0x8827] = Word((ushort)shot.Iso);
        segment.exif[0x8830] = Word(1);
        segment.exif[0x9000] = (7, 4, "0230"u8.ToArray());
        segment.exif[0x9003] = Text(shot.Taken);
        segment.exif[0xA001] = Word(1);
        segment.exif[0xA405] = Word((ushort)shot.FocalLength35);
        return segment.Build();
    }

    /// <summary>The JPEG with the segment put behind its start marker.</summary>
    public static byte[] InsertInto(byte[] jpeg, byte[] segment)
        => [.. jpeg.AsSpan(0, 2), .. segment, .. jpeg.AsSpan(2)];

    private static (ushort Type, uint Count, byte[] Value) Word(ushort value) => (Short, 1, BitConverter.GetBytes(value));

    private static (ushort Type, uint Count, byte[] Value) Ratio(uint over, uint under)
        => (Rational, 1, [.. BitConverter.GetBytes(over), .. BitConverter.GetBytes(under)]);

    private static (ushort Type, uint Count, byte[] Value) Text(string text)
        => (Ascii, (uint)text.Length + 1, [.. Encoding.ASCII.GetBytes(text), 0]);

    private byte[] Build()
    {
        var exifOffset = 8 + Size(primary, extraEntries: 1);
        primary[0x8769] = (Long, 1, BitConverter.GetBytes((uint)exifOffset));
        using var tiff = new MemoryStream();
        tiff.Write([(byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0]);
        WriteDirectory(tiff, primary, 8);
        WriteDirectory(tiff, exif, exifOffset);
        var body = tiff.ToArray();
        var segment = new byte[10 + body.Length];
        (segment[0], segment[1]) = (0xFF, 0xE1);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(8 + body.Length));
        "Exif\0\0"u8.CopyTo(segment.AsSpan(4));
        body.CopyTo(segment.AsSpan(10));
        return segment;
    }

    private static int Size(SortedDictionary<ushort, (ushort Type, uint Count, byte[] Value)> directory, int extraEntries)
        => 2 + (12 * (directory.Count + extraEntries)) + 4 + directory.Values.Sum(entry => entry.Value.Length > 4 ? entry.Value.Length + (entry.Value.Length % 2) : 0);

    private static void WriteDirectory(MemoryStream to, SortedDictionary<ushort, (ushort Type, uint Count, byte[] Value)> directory, int offset)
    {
        var beyond = offset + 2 + (12 * directory.Count) + 4;
        var values = new MemoryStream();
        to.Write(BitConverter.GetBytes((ushort)directory.Count));
        foreach (var (tag, (type, count, value)) in directory)
        {
            to.Write(BitConverter.GetBytes(tag));
            to.Write(BitConverter.GetBytes(type));
            to.Write(BitConverter.GetBytes(count));
            if (value.Length <= 4)
            {
                to.Write([.. value, .. new byte[4 - value.Length]]);
                continue;
            }

            to.Write(BitConverter.GetBytes((uint)(beyond + values.Length)));
            values.Write(value);
            if (value.Length % 2 == 1)
            {
                values.WriteByte(0);
            }
        }

        to.Write(new byte[4]);
        to.Write(values.ToArray());
    }
}
