using SkiaSharp;

namespace Foramen.Demo.Render;

/// <summary>
/// A photograph of a finished sheet: the picture of the sheet is mirrored, as one looks at its coating, laid aslant on grey card beside two patches of known density, and lit
/// unevenly. Sheets come from <c>foramen preview --negative-out</c>; nothing of the engine is used here.
/// </summary>
internal static class LaidPrint
{
    private const int Width = 1600;
    private const int Height = 1200;
    private const double CardDensity = 0.35;
    private const double Brightest = 0.8;

    // The sheet's corners, clockwise from the upper left.
    private static readonly (double X, double Y)[] Corners = [(250, 170), (1400, 130), (1440, 1050), (210, 1020)];
    private static readonly (double X, double Y, double Density)[] Patches = [(90, 110, 0.06), (90, 230, 1.35)];

    public static void Write(string sheetPath, string path)
    {
        using var sheet = SKBitmap.Decode(sheetPath) ?? throw new InvalidOperationException($"{sheetPath} is not a picture.");
        var map = Square(Corners);
        using var photograph = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Gray8, SKAlphaType.Opaque));
        var chance = new Random(20260509);
        var codes = new byte[Width * Height];
        for (var i = 0; i < codes.Length; i++)
        {
            var (column, row) = (i % Width, i / Width);
            var sum = 0.0;
            for (var sub = 0; sub < 9; sub++)
            {
                sum += Reflectance(sheet, map, column + ((sub % 3) + 0.5) / 3, row + ((sub / 3) + 0.5) / 3);
            }

            var (u, v) = ((column / (double)Width) - 0.3, (row / (double)Height) - 0.4);
            var light = Brightest * Math.Exp(-0.5 * ((u * u) + (v * v))) * (0.005 + (0.995 * sum / 9));
            codes[i] = Srgb.ToCode(light, (chance.NextDouble() * 2) - 1);
        }

        System.Runtime.InteropServices.Marshal.Copy(codes, 0, photograph.GetPixels(), codes.Length);
        using var encoded = photograph.Encode(SKEncodedImageFormat.Jpeg, 90);
        File.WriteAllBytes(path, encoded.ToArray());
    }

    private static double Reflectance(SKBitmap sheet, SKMatrix map, double x, double y)
    {
        foreach (var patch in Patches)
        {
            if (Math.Abs(x - patch.X) < 45 && Math.Abs(y - patch.Y) < 45)
            {
                return Math.Pow(10, -patch.Density);
            }
        }

        var place = map.MapPoint((float)x, (float)y);
        return place.X is >= 0 and < 1 && place.Y is >= 0 and < 1
            ? Math.Pow(10, -0.06) * Srgb.ToLinear(sheet.GetPixel((int)((1 - place.X) * sheet.Width), (int)(place.Y * sheet.Height)).Red / 255.0)
            : Math.Pow(10, -CardDensity);
    }

    // From pixels to the unit square: the inverse of the projective map of the square onto four corners (Heckbert, 1989).
    private static SKMatrix Square((double X, double Y)[] c)
    {
        var (dx1, dy1, dx2, dy2) = (c[1].X - c[2].X, c[1].Y - c[2].Y, c[3].X - c[2].X, c[3].Y - c[2].Y);
        var (sx, sy) = (c[0].X - c[1].X + c[2].X - c[3].X, c[0].Y - c[1].Y + c[2].Y - c[3].Y);
        var determinant = (dx1 * dy2) - (dx2 * dy1);
        var (g, h) = (((sx * dy2) - (dx2 * sy)) / determinant, ((dx1 * sy) - (sx * dy1)) / determinant);
        var forward = new SKMatrix(
            (float)(c[1].X - c[0].X + (g * c[1].X)), (float)(c[3].X - c[0].X + (h * c[3].X)), (float)c[0].X,
            (float)(c[1].Y - c[0].Y + (g * c[1].Y)), (float)(c[3].Y - c[0].Y + (h * c[3].Y)), (float)c[0].Y,
            (float)g, (float)h, 1);
        return forward.Invert();
    }
}
