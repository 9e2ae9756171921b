namespace Foramen.Demo.Render;

/// <summary>The transfer function of IEC 61966-2-1, written apart from the Engine's so that the two check each other.</summary>
internal static class Srgb
{
    public static double ToLinear(double code) => code <= 0.04045 ? code / 12.92 : Math.Pow((code + 0.055) / 1.055, 2.4);

    /// <summary>The 8-bit code of a linear value, with some grain added in codes.</summary>
    public static byte ToCode(double linear, double grain = 0)
    {
        var v = Math.Clamp(linear, 0, 1);
        var code = 255 * (v <= 0.0031308 ? 12.92 * v : (1.055 * Math.Pow(v, 1 / 2.4)) - 0.055);
        return (byte)Math.Round(Math.Clamp(linear >= 1 ? 255 : code + grain, 0, 255));
    }
}
