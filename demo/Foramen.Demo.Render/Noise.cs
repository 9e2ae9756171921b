namespace Foramen.Demo.Render;

/// <summary>Repeatable value noise: a hash of the lattice, smoothed. No seed but the coordinates, so every run draws the same picture.</summary>
internal static class Noise
{
    /// <summary>A number in [0, 1) for a lattice cell.</summary>
    public static double Cell(int x, int y, int layer = 0)
    {
        unchecked
        {
            var h = ((uint)x * 0x9E3779B1u) ^ ((uint)y * 0x85EBCA77u) ^ ((uint)layer * 0xC2B2AE3Du);
            h ^= h >> 15;
            h *= 0x2C1B3C6Du;
            h ^= h >> 12;
            h *= 0x297A2D39u;
            h ^= h >> 15;
            return h / 4294967296.0;
        }
    }

    /// <summary>Smooth noise in [0, 1].</summary>
    public static double Smooth(double x, double y, int layer = 0)
    {
        var (x0, y0) = ((int)Math.Floor(x), (int)Math.Floor(y));
        var (fx, fy) = (Fade(x - x0), Fade(y - y0));
        var top = Lerp(Cell(x0, y0, layer), Cell(x0 + 1, y0, layer), fx);
        var bottom = Lerp(Cell(x0, y0 + 1, layer), Cell(x0 + 1, y0 + 1, layer), fx);
        return Lerp(top, bottom, fy);
    }

    /// <summary>Layers of smooth noise, each finer and fainter, in [0, 1].</summary>
    public static double Layers(double x, double y, int layers, int layer = 0)
    {
        var (sum, weight, total) = (0.0, 1.0, 0.0);
        for (var i = 0; i < layers; i++)
        {
            sum += weight * Smooth(x, y, layer + (17 * i));
            total += weight;
            weight *= 0.55;
            (x, y) = ((x * 2.03) + 3.7, (y * 2.03) - 1.9);
        }

        return sum / total;
    }

    public static double Step(double from, double to, double x) => Fade(Math.Clamp((x - from) / (to - from), 0, 1));

    private static double Fade(double t) => t * t * (3 - (2 * t));

    private static double Lerp(double a, double b, double t) => a + ((b - a) * t);
}
