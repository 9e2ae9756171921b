using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>A strip drawn in perspective, with uneven light, dust and flare that are known: six or so patches below a white edge, on grey.</summary>
internal static class RenderedStrip
{
    public const int Width = 640;
    public const int Height = 300;
    public const double WhiteEdge = 0.2;
    public const double WhiteDensity = 0.08;

    /// <summary>Top left, top right, bottom right, bottom left.</summary>
    public static PixelPoint[] Corners { get; } = [PixelPoint.At(40, 60), PixelPoint.At(600, 30), PixelPoint.At(610, 270), PixelPoint.At(30, 240)];

    /// <summary>Codes in proportion to light.</summary>
    public static ScanImage Draw(double[] densities, double falling, double flare, bool dust, double exposure = 0.9)
        => ScanImage.FromGrey(
            Width, Height, Array.ConvertAll(Light(densities, falling, flare, dust, exposure), light => (byte)Math.Clamp(Math.Round(255 * light), 0, 255)), ScanEncoding.Linear);

    /// <summary>As a browser decodes it: four bytes a pixel, sRGB.</summary>
    public static byte[] Rgba(double[] densities, double falling = 0, double flare = 0, bool dust = false, double exposure = 0.9)
        => [.. Light(densities, falling, flare, dust, exposure).SelectMany(light => Enumerable.Repeat(SrgbTransfer.CodeOf((float)Math.Clamp(light, 0, 1)), 3).Append(byte.MaxValue))];

    // Every place between the marks is drawn by going over them finely; the rest of the picture is grey.
    private static double[] Light(double[] densities, double falling, double flare, bool dust, double exposure)
    {
        var lights = new double[Width * Height];
        Array.Fill(lights, 128 / 255.0);
        var map = Homography.Through(Corners[0], Corners[1], Corners[2], Corners[3]);
        for (var i = 0; i < 1800; i++)
        {
            for (var j = 0; j < 800; j++)
            {
                var (u, v) = ((i + 0.5) / 1800, (j + 0.5) / 800);
                var density = v < WhiteEdge ? WhiteDensity : densities[(int)(u * densities.Length)];
                var light = exposure * ((Math.Pow(10, -density) * (1 - flare)) + flare) * Math.Exp(-falling * (u - 0.5) * (u - 0.5) * 4);
                light = dust && ((i * 7919) + (j * 104_729)) % 50 == 0 ? 0.9 : light;
                var (x, y) = map.Map(u, v);
                lights[((int)y * Width) + (int)x] = light;
            }
        }

        return lights;
    }
}
