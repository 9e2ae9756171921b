using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>Scans drawn from what their light is meant to be, codes in proportion to it.</summary>
internal static class ScanPictures
{
    /// <summary>Light 1 is density 0, and there is no flare: codes are reflectances.</summary>
    public static ReflectanceScale LightIsReflectance { get; } = ReflectanceScale.Through([(1, Density.FromValue(0))]);

    /// <summary>Light of each pixel by its column and row, 0 to 1.</summary>
    public static ScanImage Draw(int width, int height, Func<int, int, double> light)
    {
        var codes = new byte[width * height];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = (byte)Math.Clamp(Math.Round(255 * light(i % width, i / width)), 0, 255);
        }

        return ScanImage.FromGrey(width, height, codes, ScanEncoding.Linear);
    }

    /// <summary>A four-sided figure on ground, each pixel of its edges the mean of 5 × 5 places in it; corners clockwise as they are looked at.</summary>
    public static ScanImage DrawSheet(int width, int height, (double X, double Y)[] corners, Func<double, double, double> ground, Func<double, double, double> sheet)
        => Draw(width, height, (column, row) =>
        {
            var held = 0;
            for (var k = 0; k < 4; k++)
            {
                held += IsWithin(corners, column + (k % 2), row + (k / 2)) ? 1 : 0;
            }

            if (held is 0 or 4)
            {
                return held == 0 ? ground(column + 0.5, row + 0.5) : sheet(column + 0.5, row + 0.5);
            }

            var sum = 0.0;
            for (var k = 0; k < 25; k++)
            {
                var (x, y) = (column + ((k % 5) + 0.5) / 5, row + ((k / 5) + 0.5) / 5);
                sum += IsWithin(corners, x, y) ? sheet(x, y) : ground(x, y);
            }

            return sum / 25;
        });

    /// <summary>A whole scan as its own sheet.</summary>
    public static PrintCorners Whole(ScanImage scan)
        => new(PixelPoint.At(0, 0), PixelPoint.At(scan.Width, 0), PixelPoint.At(scan.Width, scan.Height), PixelPoint.At(0, scan.Height));

    public static PrintCorners Named((double X, double Y)[] corners)
        => new(PixelPoint.At(corners[0].X, corners[0].Y), PixelPoint.At(corners[1].X, corners[1].Y), PixelPoint.At(corners[2].X, corners[2].Y), PixelPoint.At(corners[3].X, corners[3].Y));

    private static bool IsWithin((double X, double Y)[] corners, double x, double y)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            if ((b.X - a.X) * (y - a.Y) < (b.Y - a.Y) * (x - a.X))
            {
                return false;
            }
        }

        return true;
    }
}
