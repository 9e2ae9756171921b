using System.Buffers.Binary;
using System.Text;
using Foramen.Engine.Scene;

namespace Foramen.Exif;

/// <summary>
/// What an ICC profile (ICC.1:2010) says of a photograph's colours: by its primaries where it has them, else by its name; and whether a middle code stands for about
/// the light that it does in sRGB.
/// </summary>
/// <param name="Colour">The colour space, if it is one of those known.</param>
/// <param name="MiddleLight">Light of half of full code, as a fraction of that of full code; null where the profile does not say simply.</param>
internal sealed record ColourProfile(PhotographColour? Colour, double? MiddleLight)
{
    /// <summary>Profiles differ by their makers' rounding and adaptation in the third place; sRGB and Display P3 by 0.08 in the red alone.</summary>
    private const double PrimariesTolerance = 0.008;

    /// <summary>X, Y, Z of red, green and blue of sRGB (IEC 61966-2-1), adapted to D50 by Bradford's transform.</summary>
    private static readonly double[] Srgb = [0.4361, 0.2225, 0.0139, 0.3851, 0.7169, 0.0971, 0.1431, 0.0606, 0.7141];

    /// <summary>The same for Display P3: primaries of SMPTE RP 431-2, white D65.</summary>
    private static readonly double[] DisplayP3 = [0.5151, 0.2412, -0.0011, 0.2920, 0.6922, 0.0419, 0.1571, 0.0666, 0.7841];

    /// <summary>Reads a profile.</summary>
    public static ColourProfile Of(ReadOnlyMemory<byte> profile)
    {
        var tags = Tags(profile);
        double[] columns = [.. Xyz(tags, "rXYZ"), .. Xyz(tags, "gXYZ"), .. Xyz(tags, "bXYZ")];
        return new ColourProfile(columns.Length == 9 ? ByPrimaries(columns) : ByName(tags), tags.TryGetValue("gTRC", out var curve) ? MiddleOf(curve.Span) : null);
    }

    private static PhotographColour? ByPrimaries(double[] columns)
        => Near(columns, Srgb) ? PhotographColour.Srgb : Near(columns, DisplayP3) ? PhotographColour.DisplayP3 : null;

    private static PhotographColour? ByName(Dictionary<string, ReadOnlyMemory<byte>> tags)
    {
        if (!tags.TryGetValue("desc", out var description))
        {
            return null;
        }

        // 'desc' of version 2 is ASCII, 'mluc' of version 4 is UTF-16; without its zeros either can be searched.
        var name = Encoding.ASCII.GetString([.. description.Span[..Math.Min(512, description.Length)].ToArray().Where(code => code != 0)]);
        return name.Contains("sRGB", StringComparison.OrdinalIgnoreCase) ? PhotographColour.Srgb
            : name.Contains("Display P3", StringComparison.OrdinalIgnoreCase) ? PhotographColour.DisplayP3 : null;
    }

    private static bool Near(double[] a, double[] b) => a.Zip(b).All(pair => Math.Abs(pair.First - pair.Second) <= PrimariesTolerance);

    private static double[] Xyz(Dictionary<string, ReadOnlyMemory<byte>> tags, string signature)
        => tags.TryGetValue(signature, out var tag) && tag.Length >= 20 && tag.Span.StartsWith("XYZ "u8)
            ? [Fixed(tag.Span[8..]), Fixed(tag.Span[12..]), Fixed(tag.Span[16..])]
            : [];

    /// <summary>A tone curve at one half: 'curv' (a line, a power, a table) or 'para' (a power, with a toe for functions 1 to 4).</summary>
    private static double? MiddleOf(ReadOnlySpan<byte> curve)
    {
        if (curve.Length < 12)
        {
            return null;
        }

        if (curve.StartsWith("curv"u8))
        {
            var count = BinaryPrimitives.ReadUInt32BigEndian(curve[8..]);
            return count == 0 ? 0.5
                : 12 + (2L * count) > curve.Length ? null
                : count == 1 ? Math.Pow(0.5, BinaryPrimitives.ReadUInt16BigEndian(curve[12..]) / 256.0)
                : BinaryPrimitives.ReadUInt16BigEndian(curve[(12 + (2 * (int)(count / 2)))..]) / 65535.0;
        }

        // Half lies above the toe of any curve meant for pictures, so only the power is looked at: (a·x + b)^g, plus c or e that are small there.
        var powered = curve.StartsWith("para"u8) && curve.Length >= 16;
        var simple = powered && BinaryPrimitives.ReadUInt16BigEndian(curve[8..]) == 0;
        return simple ? Math.Pow(0.5, Fixed(curve[12..]))
            : powered && curve.Length >= 24 ? Math.Pow(Math.Max(0, (0.5 * Fixed(curve[16..])) + Fixed(curve[20..])), Fixed(curve[12..])) : null;
    }

    private static double Fixed(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadInt32BigEndian(bytes) / 65536.0;

    private static Dictionary<string, ReadOnlyMemory<byte>> Tags(ReadOnlyMemory<byte> profile)
    {
        const int Header = 128;
        var tags = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        if (profile.Length < Header + 4)
        {
            return tags;
        }

        var bytes = profile.Span;
        var count = Math.Min(100, BinaryPrimitives.ReadUInt32BigEndian(bytes[Header..]));
        for (var at = Header + 4; count > 0 && at + 12 <= bytes.Length; at += 12, count--)
        {
            long offset = BinaryPrimitives.ReadUInt32BigEndian(bytes[(at + 4)..]), length = BinaryPrimitives.ReadUInt32BigEndian(bytes[(at + 8)..]);
            if (offset + length <= bytes.Length)
            {
                tags.TryAdd(Encoding.ASCII.GetString(bytes.Slice(at, 4)), profile.Slice((int)offset, (int)length));
            }
        }

        return tags;
    }
}
