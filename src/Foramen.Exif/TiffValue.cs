using System.Buffers.Binary;
using System.Text;

namespace Foramen.Exif;

/// <summary>The value of one tag (TIFF 6.0, section 2). Of several numbers the first counts.</summary>
internal readonly struct TiffValue
{
    private const ushort Byte = 1, Ascii = 2, Short = 3, Long = 4, Rational = 5, SignedShort = 8, SignedLong = 9, SignedRational = 10, Utf8 = 129;

    private readonly ReadOnlyMemory<byte> bytes;
    private readonly ushort type;
    private readonly bool big;

    private TiffValue(ushort type, ReadOnlyMemory<byte> bytes, bool big)
    {
        this.type = type;
        this.bytes = bytes;
        this.big = big;
    }

    /// <summary>The value of an entry of 12 bytes; null where it is empty, of an unknown type, or outside the structure.</summary>
    public static TiffValue? Of(ReadOnlyMemory<byte> tiff, ReadOnlyMemory<byte> entry, bool big)
    {
        var head = entry.Span;
        var type = big ? BinaryPrimitives.ReadUInt16BigEndian(head[2..]) : BinaryPrimitives.ReadUInt16LittleEndian(head[2..]);
        var length = Size(type) * (long)Number(head[4..], big);
        if (length == 0)
        {
            return null;
        }

        if (length <= 4)
        {
            return new TiffValue(type, entry.Slice(8, (int)length), big);
        }

        long offset = Number(head[8..], big);
        return offset + length <= tiff.Length ? new TiffValue(type, tiff.Slice((int)offset, (int)length), big) : null;
    }

    /// <summary>A whole number; null for other types.</summary>
    public long? Integer => type switch
    {
        Byte => bytes.Span[0],
        Short => Half,
        SignedShort => (short)Half,
        Long => Number(bytes.Span, big),
        SignedLong => (int)Number(bytes.Span, big),
        _ => null,
    };

    /// <summary>A ratio, or a whole number over one; null for other types.</summary>
    public (long Over, long Under)? Ratio => type switch
    {
        Rational => (Number(bytes.Span, big), Number(bytes.Span[4..], big)),
        SignedRational => ((int)Number(bytes.Span, big), (int)Number(bytes.Span[4..], big)),
        _ => Integer is { } whole ? (whole, 1) : null,
    };

    /// <summary>A text up to its zero; null for other types.</summary>
    public string? Text => type is Ascii or Utf8 ? Encoding.UTF8.GetString(bytes.Span[..Math.Min(64, bytes.Length)]).Split('\0')[0] : null;

    private ushort Half => big ? BinaryPrimitives.ReadUInt16BigEndian(bytes.Span) : BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span);

    private static int Size(ushort type) => type switch
    {
        Byte or Ascii or Utf8 => 1,
        Short or SignedShort => 2,
        Long or SignedLong => 4,
        Rational or SignedRational => 8,
        _ => 0,
    };

    private static uint Number(ReadOnlySpan<byte> bytes, bool big)
        => big ? BinaryPrimitives.ReadUInt32BigEndian(bytes) : BinaryPrimitives.ReadUInt32LittleEndian(bytes);
}
