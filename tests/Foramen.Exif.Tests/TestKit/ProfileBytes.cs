using System.Buffers.Binary;
using System.Text;

namespace Foramen.Exif.Tests.TestKit;

/// <summary>
/// Small ICC profiles (ICC.1:2010): the 128-byte header, a table of tags, a description and the colours of the three primaries as seen under D50.
/// </summary>
public static class ProfileBytes
{
    /// <summary>Columns of the sRGB matrix adapted to D50, X Y Z of red, green, blue, as the ICC's own sRGB profiles carry them.</summary>
    public static readonly double[] SrgbColumns = [0.43607, 0.22249, 0.01392, 0.38515, 0.71687, 0.09708, 0.14307, 0.06061, 0.71410];

    /// <summary>The same for Display P3 (SMPTE EG 432-1 primaries, white D65, adapted to D50 by Bradford's transform), as its profiles carry them.</summary>
    public static readonly double[] DisplayP3Columns = [0.51512, 0.24120, -0.00105, 0.29198, 0.69225, 0.04189, 0.15710, 0.06657, 0.78407];

    /// <summary>The same for a wider colour space, with the primaries of ITU-R BT.2020.</summary>
    public static readonly double[] WideColumns = [0.67348, 0.27904, -0.00194, 0.16567, 0.67535, 0.02999, 0.12512, 0.04561, 0.79686];

    /// <summary>A profile that says no more than its name.</summary>
    public static byte[] Named(string name) => Build(name, [], null);

    /// <summary>A profile with a name and colours.</summary>
    /// <param name="name">Its description.</param>
    /// <param name="columns">X, Y, Z of red, green and blue.</param>
    /// <param name="curve">The body of the tone curve of green, if any.</param>
    public static byte[] With(string name, double[] columns, byte[]? curve = null) => Build(name, columns, curve);

    /// <summary>A tone curve that is one power ('curv' with one value, u8Fixed8).</summary>
    public static byte[] Power(double power) => [.. "curv"u8, 0, 0, 0, 0, 0, 0, 0, 1, (byte)power, (byte)Math.Round((power - Math.Floor(power)) * 256)];

    /// <summary>The tone curve of sRGB ('para', function 3: g, a, b, c, d of IEC 61966-2-1).</summary>
    public static byte[] SrgbCurve()
        => [.. "para"u8, 0, 0, 0, 0, 0, 3, 0, 0, .. new[] { 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045 }.SelectMany(value => Number((int)Math.Round(value * 65536)))];

    private static byte[] Build(string name, double[] columns, byte[]? curve)
    {
        var text = Encoding.BigEndianUnicode.GetBytes(name);
        var tags = new List<(string Signature, byte[] Body)>
        {
            ("desc", [.. "mluc"u8, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 12, .. "enUS"u8, .. Number(text.Length), 0, 0, 0, 28, .. text, .. new byte[text.Length % 4]]),
        };
        for (var column = 0; column < columns.Length / 3; column++)
        {
            tags.Add(("rgb"[column] + "XYZ", [.. "XYZ "u8, 0, 0, 0, 0, .. columns.Skip(3 * column).Take(3).SelectMany(value => Number((int)Math.Round(value * 65536)))]));
        }

        if (curve is not null)
        {
            tags.Add(("gTRC", curve));
        }

        var offset = 128 + 4 + (12 * tags.Count);
        var (table, bodies) = (new List<byte>(Number(tags.Count)), new List<byte>());
        foreach (var (signature, body) in tags)
        {
            table.AddRange([.. Encoding.ASCII.GetBytes(signature), .. Number(offset + bodies.Count), .. Number(body.Length)]);
            bodies.AddRange(body);
        }

        var header = new byte[128];
        Number(offset + bodies.Count).CopyTo(header, 0);
        header[8] = 4;
        "mntrRGB XYZ "u8.CopyTo(header.AsSpan(12));
        "acsp"u8.CopyTo(header.AsSpan(36));
        return [.. header, .. table, .. bodies];
    }

    private static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }
}
