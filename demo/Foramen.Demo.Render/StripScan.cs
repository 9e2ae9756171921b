using SkiaSharp;

namespace Foramen.Demo.Render;

/// <summary>
/// A scan of a test strip on direct-positive paper, invented: eight patches of 8 s to 1024 s, a stop apart, densities 0.09 + 1.81/(1 + (t/55 s)^2.1); an edge of paper white
/// (0.09) along the top seventh of what the corners mark, and a masked patch (1.90) to the left of it. The scanner's lamp is an eighth weaker at both ends, half a percent
/// of flare lies over everything, there is dust, and the strip lies a little crooked. Corners at 110,60 580,72 576,222 106,210.
/// </summary>
internal static class StripScan
{
    public const double WhiteDensity = 0.09;
    public const double BlackDensity = 1.90;
    private const int Width = 660;
    private const int Height = 290;
    private const int Patches = 8;
    private const double WhiteEdge = 1.0 / 7;

    /// <summary>Density of a patch, from 0.</summary>
    public static double DensityOf(int patch) => WhiteDensity + ((BlackDensity - WhiteDensity) / (1 + Math.Pow(8 * Math.Pow(2, patch) / 55, 2.1)));

    public static void Write(string path)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Gray8, SKAlphaType.Opaque));
        System.Runtime.InteropServices.Marshal.Copy(Codes(), 0, bitmap.GetPixels(), Width * Height);
        using var encoded = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        File.WriteAllBytes(path, encoded.ToArray());
    }

    private static byte[] Codes()
    {
        const int Samples = 3;
        var codes = new byte[Width * Height];
        for (var i = 0; i < codes.Length; i++)
        {
            var (column, row) = (i % Width, i / Width);
            var reflectance = 0.0;
            for (var sample = 0; sample < Samples * Samples; sample++)
            {
                reflectance += ReflectanceAt(column + (((sample % Samples) + 0.5) / Samples), row + (((sample / Samples) + 0.5) / Samples)) / (Samples * Samples);
            }

            var (u, _) = PlaceOf(column + 0.5, row + 0.5);
            var light = 0.9 * ((0.995 * reflectance) + 0.005) * (1 - (0.125 * 4 * (u - 0.5) * (u - 0.5)));
            var grain = Enumerable.Range(0, 4).Sum(layer => Noise.Cell(column, row, layer)) - 2;
            light = Noise.Cell(column / 2, row / 2, 9) < 0.0015 ? 0.85 : light;
            codes[i] = Srgb.ToCode(light, 1.2 * Math.Sqrt(3) * grain);
        }

        return codes;
    }

    // The strip's own sides: 470,12 along the patches, −4,150 downwards.
    private static (double U, double V) PlaceOf(double x, double y)
    {
        const double Determinant = (470 * 150) + (12 * 4);
        var (dx, dy) = (x - 110, y - 60);
        return (((150 * dx) + (4 * dy)) / Determinant, ((470 * dy) - (12 * dx)) / Determinant);
    }

    private static double ReflectanceAt(double x, double y)
    {
        var (u, v) = PlaceOf(x, y);
        var density = (u, v) switch
        {
            ( < -0.15 or > 1.02, _) or (_, < -0.03 or > 1.06) => 0.45,
            (_, < WhiteEdge) => WhiteDensity,
            ( < -0.02, _) => BlackDensity,
            ( >= 0 and < 1, < 1) => DensityOf((int)(u * Patches)),
            _ => WhiteDensity,
        };
        return Math.Pow(10, -density);
    }
}
