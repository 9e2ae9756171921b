namespace Foramen.Engine.Camera;

/// <summary>The pixels of a band along an outline, every few of them where there are very many.</summary>
internal sealed class EdgePixels
{
    private const double MostPixels = 30_000;

    private EdgePixels(int stride, (float X, float Y, float Light)[] pixels) => (Stride, All) = (stride, pixels);

    /// <summary>From pixel taken to pixel taken, each way.</summary>
    public int Stride { get; }

    /// <summary>Places of their middles, and their light.</summary>
    public (float X, float Y, float Light)[] All { get; }

    /// <summary>Part of them at the lightest or darkest code there is.</summary>
    public double ClippedPart { get; private init; }

    /// <summary>The band about a model's outline.</summary>
    public static EdgePixels About(EdgeModel model, ScanImage scan)
    {
        // Wide enough for both levels to be seen beyond the blur, and for burrs.
        var radius = model.MeanRadius;
        var band = Math.Max((5 * model.Sigma) + 3, radius / 10);
        var reach = radius + model.Reach + band;
        var stride = Math.Max(1, (int)Math.Sqrt(4 * Math.PI * radius * band / MostPixels));
        var pixels = new List<(float X, float Y, float Light)>();
        var clipped = 0;
        var (top, bottom) = (Math.Max(0, (int)(model.Y - reach)), Math.Min(scan.Height - 1, (int)(model.Y + reach)));
        var (left, right) = (Math.Max(0, (int)(model.X - reach)), Math.Min(scan.Width - 1, (int)(model.X + reach)));
        for (var row = top; row <= bottom; row += stride)
        {
            var codes = scan.Row(row);
            for (var column = left; column <= right; column += stride)
            {
                var (dx, dy) = (column + 0.5 - model.X, row + 0.5 - model.Y);
                var r = double.Hypot(dx, dy);

                // The outline in this direction is asked for only where it decides.
                var aside = Math.Abs(r - radius);
                if (aside > band + model.Reach || (aside > band - model.Reach && Math.Abs(r - model.RadiusAt(Math.Atan2(dy, dx))) > band))
                {
                    continue;
                }

                pixels.Add((column + 0.5f, row + 0.5f, scan.LightOf(codes[column])));
                clipped += codes[column] is 0 or 255 ? 1 : 0;
            }
        }

        return new EdgePixels(stride, [.. pixels]) { ClippedPart = clipped / Math.Max(1.0, pixels.Count) };
    }
}
