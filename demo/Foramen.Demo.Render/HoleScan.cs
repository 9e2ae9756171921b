using SkiaSharp;

namespace Foramen.Demo.Render;

/// <summary>
/// A scan of box A's plate at 4800 dpi, invented: a hole 0.360 × 0.340 mm wide (0.3499 mm by its area), turned by 30°, lit from behind, with a hair beside it, a blur of 1.2
/// pixels and the scanner's noise.
/// </summary>
internal static class HoleScan
{
    private const int Width = 420;
    private const int Height = 360;
    private const double PixelsPerMillimetre = 4800 / 25.4;

    public static void Write(string path)
    {
        var light = Blurred(Drawn(), 1.2);
        var codes = new byte[light.Length];
        for (var i = 0; i < codes.Length; i++)
        {
            // Four even numbers make a bell of standard deviation 1/√3.
            var grain = Enumerable.Range(0, 4).Sum(layer => Noise.Cell(i % Width, i / Width, layer)) - 2;
            codes[i] = Srgb.ToCode(light[i] + (0.012 * Math.Sqrt(3) * grain));
        }

        using var bitmap = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Gray8, SKAlphaType.Opaque));
        System.Runtime.InteropServices.Marshal.Copy(codes, 0, bitmap.GetPixels(), codes.Length);
        using var encoded = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(path, encoded.ToArray());
    }

    private static double[] Drawn()
    {
        const int Samples = 6;
        var (cos, sin) = (Math.Cos(Math.PI / 6), Math.Sin(Math.PI / 6));
        var (a, b) = (0.180 * PixelsPerMillimetre, 0.170 * PixelsPerMillimetre);
        var light = new double[Width * Height];
        for (var i = 0; i < light.Length; i++)
        {
            var inside = 0;
            for (var sample = 0; sample < Samples * Samples; sample++)
            {
                var x = (i % Width) + (((sample % Samples) + 0.5) / Samples);
                var y = (i / Width) + (((sample / Samples) + 0.5) / Samples);
                var (dx, dy) = (x - 205.3, y - 187.8);
                var (u, v) = ((dx * cos) + (dy * sin), (dy * cos) - (dx * sin));
                inside += (u * u / (a * a)) + (v * v / (b * b)) <= 1 || IsHair(x, y) ? 1 : 0;
            }

            light[i] = 0.05 + (0.02 * (i % Width) / Width) + (0.72 * inside / (Samples * Samples));
        }

        return light;
    }

    private static bool IsHair(double x, double y) => x is > 40 and < 130 && Math.Abs(y - 60 - (12 * Math.Sin(x / 30))) < 2;

    private static double[] Blurred(double[] plane, double sigma)
    {
        var half = (int)Math.Ceiling(4 * sigma);
        var weights = Enumerable.Range(-half, (2 * half) + 1).Select(i => Math.Exp(-i * i / (2 * sigma * sigma))).ToArray();
        var sum = weights.Sum();
        double[] Pass(double[] from, int across, int down)
        {
            var into = new double[from.Length];
            for (var i = 0; i < into.Length; i++)
            {
                for (var k = -half; k <= half; k++)
                {
                    var (x, y) = (Math.Clamp((i % Width) + (k * across), 0, Width - 1), Math.Clamp((i / Width) + (k * down), 0, Height - 1));
                    into[i] += weights[k + half] / sum * from[(y * Width) + x];
                }
            }

            return into;
        }

        return Pass(Pass(plane, 1, 0), 0, 1);
    }
}
