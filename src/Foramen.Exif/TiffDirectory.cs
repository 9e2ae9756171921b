using System.Buffers.Binary;

namespace Foramen.Exif;

/// <summary>
/// One directory of a TIFF structure (TIFF 6.0, section 2), as Exif uses them. It follows nothing by itself, so that no chain or circle in a file can hold it;
/// values that point outside the structure are left out.
/// </summary>
internal sealed class TiffDirectory
{
    private readonly Dictionary<ushort, TiffValue> values = [];

    private TiffDirectory()
    {
    }

    /// <summary>Whether all its entries lie within the structure; a file cut short may hold only some.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>The value of a tag; null where it is missing.</summary>
    public TiffValue? this[ushort tag] => values.TryGetValue(tag, out var value) ? value : null;

    /// <summary>The first directory; null where this is no TIFF structure.</summary>
    public static TiffDirectory? First(ReadOnlyMemory<byte> tiff)
        => IsBigEndian(tiff.Span) is { } big && tiff.Length >= 8 ? At(tiff, Number(tiff.Span[4..], big), big) : null;

    /// <summary>The directory that a value of another points to; null where there is none.</summary>
    public static TiffDirectory? At(ReadOnlyMemory<byte> tiff, long offset)
        => IsBigEndian(tiff.Span) is { } big ? At(tiff, offset, big) : null;

    private static TiffDirectory? At(ReadOnlyMemory<byte> tiff, long offset, bool big)
    {
        if (offset < 8 || offset + 2 > tiff.Length)
        {
            return null;
        }

        var bytes = tiff.Span;
        var count = big ? BinaryPrimitives.ReadUInt16BigEndian(bytes[(int)offset..]) : BinaryPrimitives.ReadUInt16LittleEndian(bytes[(int)offset..]);
        var directory = new TiffDirectory();
        for (var at = (int)offset + 2; count > 0 && at + 12 <= bytes.Length; at += 12, count--)
        {
            if (TiffValue.Of(tiff, tiff.Slice(at, 12), big) is { } value)
            {
                var tag = big ? BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]) : BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);
                directory.values.TryAdd(tag, value);
            }
        }

        directory.IsWhole = count == 0;
        return directory;
    }

    private static bool? IsBigEndian(ReadOnlySpan<byte> tiff) => tiff.StartsWith("II*\0"u8) ? false : tiff.StartsWith("MM\0*"u8) ? true : null;

    private static uint Number(ReadOnlySpan<byte> bytes, bool big)
        => big ? BinaryPrimitives.ReadUInt32BigEndian(bytes) : BinaryPrimitives.ReadUInt32LittleEndian(bytes);
}
