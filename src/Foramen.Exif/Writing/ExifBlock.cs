using System.Globalization;
using System.Text;

namespace Foramen.Exif;

/// <summary>Facts as the TIFF structure of Exif 2.32 (CIPA DC-008-2019, tables 3 to 15), little end first.</summary>
internal static class ExifBlock
{
    private const ushort Ascii = 2, Short = 3, Long = 4, Rational = 5, Byte = 1, Undefined = 7;
    private const ushort DescriptionTag = 0x010E, OrientationTag = 0x0112, ExifDirectoryTag = 0x8769, PlaceDirectoryTag = 0x8825;
    private const ushort ExposureTimeTag = 0x829A, FNumberTag = 0x829D, VersionTag = 0x9000, OriginalTag = 0x9003, OffsetTag = 0x9011, FocalLengthTag = 0x920A;
    private const ushort PlaceVersionTag = 0, NorthTag = 1, LatitudeTag = 2, EastTag = 3, LongitudeTag = 4, DatumTag = 0x12;
    private const int HeaderLength = 8;

    /// <param name="facts">What to write.</param>
    /// <param name="orientation">How the picture is turned, 1 to 8, as the file said before.</param>
    public static byte[] Of(PictureFacts facts, int orientation)
    {
        var first = new List<Entry> { new(OrientationTag, Short, 1, [(byte)orientation, 0]) };
        if (facts.Title is { Length: > 0 } title && System.Text.Ascii.IsValid(title))
        {
            first.Add(Text(DescriptionTag, title));
        }

        var exif = Shot(facts);
        var place = facts.Place is { } at ? Place(at.Latitude.Degrees, at.Longitude.Degrees) : [];

        // The pointers are of a fixed length, so where the other directories begin is known before they are written.
        var firstLength = Length(first) + (12 * (place.Count > 0 ? 2 : 1));
        first.Add(Pointer(ExifDirectoryTag, HeaderLength + firstLength));
        if (place.Count > 0)
        {
            first.Add(Pointer(PlaceDirectoryTag, HeaderLength + firstLength + Length(exif)));
        }

        var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write("II*\0"u8);
        writer.Write(HeaderLength);
        Write(writer, first);
        Write(writer, exif);
        if (place.Count > 0)
        {
            Write(writer, place);
        }

        return stream.ToArray();
    }

    private static List<Entry> Shot(PictureFacts facts)
    {
        var entries = new List<Entry> { new(VersionTag, Undefined, 4, [.. "0232"u8]) };
        if (facts.ExposureTime is { } time)
        {
            entries.Add(Ratios(ExposureTimeTag, time.Seconds));
        }

        if (facts.FNumber is { } number)
        {
            entries.Add(Ratios(FNumberTag, number.Value));
        }

        if (facts.FocalDistance is { } distance)
        {
            entries.Add(Ratios(FocalLengthTag, distance.Millimetres));
        }

        if (facts.OpenedAt is { } opened)
        {
            entries.Add(Text(OriginalTag, opened.ToString("yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture)));
            entries.Add(Text(OffsetTag, opened.ToString("zzz", CultureInfo.InvariantCulture)));
        }

        return entries;
    }

    private static List<Entry> Place(double latitude, double longitude) =>
    [
        new(PlaceVersionTag, Byte, 4, [2, 3, 0, 0]),
        Text(NorthTag, latitude < 0 ? "S" : "N"),
        Ratios(LatitudeTag, Math.Abs(latitude), 0, 0),
        Text(EastTag, longitude < 0 ? "W" : "E"),
        Ratios(LongitudeTag, Math.Abs(longitude), 0, 0),
        Text(DatumTag, "WGS-84"),
    ];

    private static Entry Text(ushort tag, string text)
    {
        byte[] bytes = [.. Encoding.ASCII.GetBytes(text), 0];
        return new Entry(tag, Ascii, bytes.Length, bytes);
    }

    private static Entry Pointer(ushort tag, int offset) => new(tag, Long, 1, BitConverter.GetBytes(offset));

    // As many decimals as fit into 32 bits, six at most.
    private static Entry Ratios(ushort tag, params double[] values)
    {
        var bytes = new List<byte>();
        foreach (var value in values)
        {
            var under = 1_000_000u;
            while (under > 1 && value * under > uint.MaxValue)
            {
                under /= 10;
            }

            bytes.AddRange(BitConverter.GetBytes((uint)Math.Min(uint.MaxValue, Math.Round(value * under))));
            bytes.AddRange(BitConverter.GetBytes(under));
        }

        return new Entry(tag, Rational, values.Length, [.. bytes]);
    }

    private static int Length(List<Entry> entries) => 2 + (12 * entries.Count) + 4 + entries.Sum(entry => entry.Beyond);

    private static void Write(BinaryWriter writer, List<Entry> entries)
    {
        entries.Sort((a, b) => a.Tag.CompareTo(b.Tag));
        var beyond = (int)writer.BaseStream.Position + 2 + (12 * entries.Count) + 4;
        writer.Write((ushort)entries.Count);
        foreach (var entry in entries)
        {
            writer.Write(entry.Tag);
            writer.Write(entry.Type);
            writer.Write(entry.Count);
            if (entry.Beyond > 0)
            {
                writer.Write(beyond);
                beyond += entry.Beyond;
            }
            else
            {
                writer.Write(entry.Bytes);
                writer.Write(new byte[4 - entry.Bytes.Length]);
            }
        }

        writer.Write(0);
        foreach (var entry in entries.Where(entry => entry.Beyond > 0))
        {
            writer.Write(entry.Bytes);
            writer.Write(new byte[entry.Bytes.Length % 2]);
        }
    }

    private sealed record Entry(ushort Tag, ushort Type, int Count, byte[] Bytes)
    {
        /// <summary>Bytes behind the directory: values longer than four bytes stand there, on even places.</summary>
        public int Beyond => Bytes.Length > 4 ? Bytes.Length + (Bytes.Length % 2) : 0;
    }
}
