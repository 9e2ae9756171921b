using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// The transfer function of sRGB (IEC 61966-2-1), which Display P3 shares: what share of full linear light a code stands for. A camera's
/// picture is rendered for the eye, so its codes are only near this in the mid-tones; see <see cref="PhotographMeter"/>.
/// </summary>
public static class SrgbTransfer
{
    private static readonly float[] Table = MakeTable();

    /// <summary>Linear light of each 8-bit code, 0 to 1, ascending; 256 entries.</summary>
    public static ReadOnlySpan<float> LinearOfCodes => Table;

    /// <summary>Linear light, 0 to 1, of a code as a fraction of full code.</summary>
    /// <param name="encoded">0 to 1.</param>
    /// <exception cref="RefusalException">Outside 0 to 1.</exception>
    public static double ToLinear(double encoded)
    {
        Guard.Within(encoded, 0, 1, "the code");
        return encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);
    }

    /// <summary>The code, as a fraction of full code, of linear light.</summary>
    /// <param name="linear">0 to 1.</param>
    /// <exception cref="RefusalException">Outside 0 to 1.</exception>
    public static double ToEncoded(double linear)
    {
        Guard.Within(linear, 0, 1, "the linear light");
        return linear <= 0.0031308 ? linear * 12.92 : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
    }

    /// <summary>Linear light of an 8-bit code, 0 to 1.</summary>
    public static float LinearOfCode(byte code) => Table[code];

    /// <summary>The 8-bit code nearest to linear light; light outside 0 to 1 gives the nearer end.</summary>
    public static byte CodeOf(double linear)
        => double.IsNaN(linear)
            ? throw new RefusalException("The linear light is not a number; it should be between 0 and 1.")
            : (byte)Math.Round(255 * ToEncoded(Math.Clamp(linear, 0, 1)));

    private static float[] MakeTable()
    {
        var table = new float[256];
        for (var code = 0; code < table.Length; code++)
        {
            table[code] = (float)ToLinear(code / 255.0);
        }

        return table;
    }
}
