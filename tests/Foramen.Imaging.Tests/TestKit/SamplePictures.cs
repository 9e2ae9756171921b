using SkiaSharp;

namespace Foramen.Imaging.Tests.TestKit;

/// <summary>Small pictures, encoded by SkiaSharp.</summary>
public static class SamplePictures
{
    /// <summary>A smooth picture with some texture, so that a JPEG of it has something in every block.</summary>
    public static byte[] Encode(int width, int height, SKEncodedImageFormat format, SKColorSpace? colours = null)
    {
        using var bitmap = Bitmap(width, height, (x, y) => new SKColor(
            (byte)(255 * x / width), (byte)(255 * y / height), (byte)(128 + (100 * Math.Sin(x * 0.7) * Math.Cos(y * 0.5)))), colours);
        return Encode(bitmap, format);
    }

    /// <summary>A picture of given pixels.</summary>
    public static byte[] Encode(int width, int height, SKEncodedImageFormat format, Func<int, int, SKColor> pixel)
    {
        using var bitmap = Bitmap(width, height, pixel, null);
        return Encode(bitmap, format);
    }

    private static byte[] Encode(SKBitmap bitmap, SKEncodedImageFormat format)
    {
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    private static SKBitmap Bitmap(int width, int height, Func<int, int, SKColor> pixel, SKColorSpace? colours)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque, colours));
        unsafe
        {
            var to = (byte*)bitmap.GetPixels();
            for (var at = 0; at < width * height; at++)
            {
                var colour = pixel(at % width, at / width);
                (to[4 * at], to[(4 * at) + 1], to[(4 * at) + 2], to[(4 * at) + 3]) = (colour.Red, colour.Green, colour.Blue, 255);
            }
        }

        return bitmap;
    }
}
