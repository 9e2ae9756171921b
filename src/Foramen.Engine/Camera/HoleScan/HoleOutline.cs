namespace Foramen.Engine.Camera;

/// <summary>
/// The outline of a hole in pixels: the fitted edge, and where the light that falls beside the fit is too much for noise, the radius that this light asks for. Light is
/// conserved by any blur, so that correction needs no edge to be seen.
/// </summary>
internal sealed class HoleOutline
{
    private const double Significant = 4;
    private const int FeretSteps = 360;

    private readonly EdgeModel model;

    private HoleOutline(EdgeModel model, double[] left) => (this.model, Left) = (model, left);

    /// <summary>What the outline lies outside the fit (inside if negative) by sector from the right, downwards; zero where that is no more than noise.</summary>
    public IReadOnlyList<double> Left { get; }

    /// <summary>Area, pixels: ½ ∮ ρ² dθ.</summary>
    public double Area
    {
        get
        {
            const int Parts = 8;
            var sum = 0.0;
            for (var i = 0; i < Left.Count * Parts; i++)
            {
                var radius = model.RadiusAt(2 * Math.PI * (i + 0.5) / (Left.Count * Parts)) + Left[i / Parts];
                sum += radius * radius;
            }

            return Math.PI * sum / (Left.Count * Parts);
        }
    }

    /// <summary>The outline of a fitted edge.</summary>
    public static HoleOutline Of(EdgeFit fit)
    {
        var model = fit.Model;
        var sectors = Math.Clamp((int)(2 * Math.PI * model.MeanRadius / 4), 12, 180);
        var excess = new double[sectors];
        var counts = new int[sectors];
        foreach (var (x, y, light) in fit.Pixels.All)
        {
            var angle = Math.Atan2(y - model.Y, x - model.X);
            var sector = (int)((angle < 0 ? angle + (2 * Math.PI) : angle) / (2 * Math.PI) * sectors) % sectors;
            excess[sector] += (light - model.LightAt(x, y)) / model.Contrast;
            counts[sector]++;
        }

        var area = (double)fit.Pixels.Stride * fit.Pixels.Stride;
        var perSector = 2 * Math.PI / sectors;
        var noise = fit.Noise / Math.Abs(model.Contrast) * Math.Sqrt(counts.Average()) * area / (perSector * model.MeanRadius);
        var left = new double[sectors];
        for (var i = 0; i < sectors; i++)
        {
            var own = excess[i] * area / (perSector * model.RadiusAt((i + 0.5) * perSector));
            left[i] = Math.Abs(own) > Significant * noise ? own : 0;
        }

        return new HoleOutline(model, left);
    }

    /// <summary>Smallest and largest distance between parallel lines that touch the fitted outline, pixels (Feret's diameters, ISO 9276-6).</summary>
    public (double Least, double Most) Feret()
    {
        var points = new (double X, double Y)[FeretSteps];
        for (var i = 0; i < FeretSteps; i++)
        {
            var angle = 2 * Math.PI * i / FeretSteps;
            var radius = model.RadiusAt(angle);
            points[i] = (radius * Math.Cos(angle), radius * Math.Sin(angle));
        }

        var (least, most) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < FeretSteps / 2; i++)
        {
            var (cos, sin) = (Math.Cos(2 * Math.PI * i / FeretSteps), Math.Sin(2 * Math.PI * i / FeretSteps));
            var (low, high) = (0.0, 0.0);
            foreach (var (x, y) in points)
            {
                var along = (x * cos) + (y * sin);
                (low, high) = (Math.Min(low, along), Math.Max(high, along));
            }

            (least, most) = (Math.Min(least, high - low), Math.Max(most, high - low));
        }

        return (least, most);
    }

    /// <summary>Largest radius less smallest about the least-squares middle, burrs included, pixels (RONt about LSCI, ISO 12181-1).</summary>
    public double RadiusRange()
    {
        var (least, most) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < Left.Count; i++)
        {
            var radius = model.RadiusAt(2 * Math.PI * (i + 0.5) / Left.Count) + Left[i];
            (least, most) = (Math.Min(least, radius), Math.Max(most, radius));
        }

        return most - least;
    }

    /// <summary>Points along the outline for drawing over the scan, pixels.</summary>
    public IReadOnlyList<PixelPoint> Points(int count)
    {
        var points = new PixelPoint[count];
        for (var i = 0; i < count; i++)
        {
            var angle = 2 * Math.PI * i / count;
            var radius = model.RadiusAt(angle) + Left[(int)((double)i / count * Left.Count)];
            points[i] = PixelPoint.At(Math.Max(0, model.X + (radius * Math.Cos(angle))), Math.Max(0, model.Y + (radius * Math.Sin(angle))));
        }

        return points;
    }
}
