using System.Text;

namespace Foramen.Exif.Tests.TestKit;

/// <summary>One value of an Exif tag, as bytes of either order.</summary>
public sealed record ExifValue(ushort Type, uint Count, Func<bool, byte[]> Bytes)
{
    /// <summary>Exif type SHORT, 16 bits.</summary>
    public static ExifValue Word(params ushort[] values)
        => new(3, (uint)values.Length, big => [.. values.SelectMany(value => Ordered(BitConverter.GetBytes(value), big))]);

    /// <summary>Exif type LONG, 32 bits.</summary>
    public static ExifValue DoubleWord(params uint[] values)
        => new(4, (uint)values.Length, big => [.. values.SelectMany(value => Ordered(BitConverter.GetBytes(value), big))]);

    public static ExifValue Rational(uint over, uint under)
        => new(5, 1, big => [.. Ordered(BitConverter.GetBytes(over), big), .. Ordered(BitConverter.GetBytes(under), big)]);

    public static ExifValue SignedRational(int over, int under)
        => new(10, 1, big => [.. Ordered(BitConverter.GetBytes(over), big), .. Ordered(BitConverter.GetBytes(under), big)]);

    public static ExifValue Text(string text) => new(2, (uint)text.Length + 1, _ => [.. Encoding.ASCII.GetBytes(text), 0]);

    internal static byte[] Ordered(byte[] native, bool big)
    {
        if (BitConverter.IsLittleEndian == big)
        {
            Array.Reverse(native);
        }

        return native;
    }
}
