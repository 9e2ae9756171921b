using System.Runtime.InteropServices;
using SkiaSharp;

namespace Foramen.Benchmarks;

/// <summary>A JPEG of a given size with the detail of a real photograph: sky, ground, edges, fine texture and a little noise.</summary>
internal static class BenchPhotograph
{
    /// <summary>Encodes a 4:3 photograph of so many megapixels at quality 92, the same bytes each time.</summary>
    public static byte[] Jpeg(double megapixels)
    {
        var height = (int)Math.Round(Math.Sqrt(megapixels * 1e6 * 3 / 4));
        var width = (int)Math.Round(height * 4 / 3.0);
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var pixels = new byte[4 * width * height];
        Paint(pixels, width, height);
        Marshal.Copy(pixels, 0, bitmap.GetPixels(), pixels.Length);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 92);
        return data.ToArray();
    }

    private static void Paint(byte[] pixels, int width, int height)
    {
        var noise = 12345u;
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (u, v) = (x / (double)width, y / (double)height);
                noise = unchecked((noise * 1664525) + 1013904223);
                var grain = ((noise >> 24) - 128.0) / 22;
                var sky = 235 - (90 * v);
                var ground = 95 + (35 * Math.Sin(x * 0.9) * Math.Sin(y * 0.7)) + (25 * Math.Sin((x + (2 * y)) * 0.13));
                var tower = 190 - (60 * Math.Abs(Math.Sin(y * 0.05)));
                var grey = (u is > 0.4 and < 0.55 && v > 0.15 ? tower : v < 0.5 ? sky : ground) + grain;
                var i = 4 * ((y * width) + x);
                pixels[i] = Code(grey * 0.95);
                pixels[i + 1] = Code(grey);
                pixels[i + 2] = Code((grey * 1.02) + (v < 0.5 ? 12 : -18));
                pixels[i + 3] = 255;
            }
        }
    }

    private static byte Code(double value) => (byte)Math.Clamp(value, 0, 255);
}
