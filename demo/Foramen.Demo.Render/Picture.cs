namespace Foramen.Demo.Render;

/// <summary>A rendered scene: radiance per pixel, known exactly, in rows from the top.</summary>
internal sealed class Picture
{
    private const double Grain = 3.5;

    private readonly Rgb[] pixels;

    private Picture(int width, int height, Rgb[] pixels)
    {
        Width = width;
        Height = height;
        this.pixels = pixels;
    }

    public int Width { get; }

    public int Height { get; }

    public Rgb this[int column, int row] => pixels[(row * Width) + column];

    /// <summary>Renders a shot with samples × samples rays a pixel.</summary>
    public static Picture Of(Shot shot, int width, int height, int samples)
    {
        var scene = new CanalBasin(shot.Light);
        var focal = shot.FocalLength35 / Math.Sqrt((36 * 36) + (24 * 24)) * double.Hypot(width, height);
        var (sin, cos) = Math.SinCos(shot.PanDegrees * Math.PI / 180);
        var pixels = new Rgb[width * height];
        Parallel.For(0, height, row =>
        {
            for (var column = 0; column < width; column++)
            {
                var sum = default(Rgb);
                for (var i = 0; i < samples * samples; i++)
                {
                    var x = (column + (((i % samples) + 0.5) / samples) - (width / 2.0)) / focal;
                    var y = ((height / 2.0) - row - (((i / samples) + 0.5) / samples)) / focal;
                    var z = cos - (x * sin);
                    sum += z <= 0.02 ? default : scene.Along((x * cos) + sin, y, z);
                }

                pixels[(row * width) + column] = sum * (1.0 / (samples * samples));
            }
        });
        return new Picture(width, height, pixels);
    }

    /// <summary>Mean radiance of a rectangle given in fractions of width and height.</summary>
    public Rgb Mean(Region region)
    {
        var (left, right) = ((int)Math.Round(region.Left * Width), (int)Math.Round(region.Right * Width));
        var (top, bottom) = ((int)Math.Round(region.Top * Height), (int)Math.Round(region.Bottom * Height));
        var (r, g, b) = (0.0, 0.0, 0.0);
        for (var row = top; row < bottom; row++)
        {
            for (var column = left; column < right; column++)
            {
                var pixel = this[column, row];
                (r, g, b) = (r + pixel.R, g + pixel.G, b + pixel.B);
            }
        }

        var count = (right - left) * (bottom - top);
        return new Rgb((float)(r / count), (float)(g / count), (float)(b / count));
    }

    /// <summary>The picture as codes, RGBA, with a saturating sensor and the sRGB transfer function.</summary>
    public byte[] Develop(double whiteLuminance)
    {
        var codes = new byte[pixels.Length * 4];
        Parallel.For(0, Height, row =>
        {
            for (var i = row * Width; i < (row + 1) * Width; i++)
            {
                // A sensor's grain, a code or so, so that the file weighs and decodes like a photograph.
                var grain = (Noise.Cell(i, row, 7) + Noise.Cell(i, row, 8) - 1) * Grain;
                codes[4 * i] = Srgb.ToCode(pixels[i].R / whiteLuminance, grain);
                codes[(4 * i) + 1] = Srgb.ToCode(pixels[i].G / whiteLuminance, grain);
                codes[(4 * i) + 2] = Srgb.ToCode(pixels[i].B / whiteLuminance, grain);
                codes[(4 * i) + 3] = 255;
            }
        });
        return codes;
    }
}
