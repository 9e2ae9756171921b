using Foramen.Engine.Quantities;
using MathNet.Numerics.Integration;

namespace Foramen.Engine.Camera;

/// <summary>
/// Contrast of a pattern of lines behind a hole, without the way over the spot: the opening's phase front overlapped with itself, shifted by
/// σ = λ z ν/a of its radius. H. H. Hopkins, Proc. R. Soc. A 231, 91 (1955), for a lens out of focus; here
/// T = (4/π) ∫₀^α sin²φ cos(u σ (cos φ − cos α)) dφ with cos α = σ/2.
/// </summary>
internal sealed class PointSpreadContrast
{
    private readonly (double SigmaPerLinePair, double U, double Part)[] lines;
    private readonly double[] nodes;
    private readonly double[] weights;

    public PointSpreadContrast(HoleWaves hole, PaperLight light)
    {
        var list = new List<(double, double, double)>();
        var largestU = 0.0;
        foreach (var (nanometres, part) in light.Lines)
        {
            var u = hole.U(nanometres);
            largestU = Math.Max(largestU, u);
            list.Add((2 * Math.PI / hole.VPerMillimetre(nanometres), u, part));
        }

        lines = [.. list];

        // The phase runs over u/2 at most.
        var rule = new GaussLegendreRule(0, 1, 24 + (int)Math.Ceiling(Math.Min(largestU, 4000) / 4));
        nodes = rule.Abscissas;
        weights = rule.Weights;
    }

    /// <summary>Contrast at a spatial frequency on the paper.</summary>
    public double At(double linePairsPerMillimetre)
    {
        Guard.Within(linePairsPerMillimetre, 0, 10_000, "the number of line pairs to the millimetre");
        var sum = 0.0;
        foreach (var (sigmaPerLinePair, u, part) in lines)
        {
            sum += part * Transfer(linePairsPerMillimetre * sigmaPerLinePair, u);
        }

        return sum;
    }

    /// <summary>The first frequency at which the contrast falls to a stated one.</summary>
    public double LinePairsPerMillimetreAt(double leastContrast)
    {
        Guard.Within(leastContrast, 0.02, 0.95, "the least contrast");

        // Steps of a fiftieth of the cut-off of the shortest wave, or of the first zero of the geometrical shadow if that comes first; then halving.
        var cutOff = 2 / lines[0].SigmaPerLinePair;
        var step = Math.Min(cutOff, 2 * 3.8317 / (Math.Max(lines[0].U, 1e-9) * lines[0].SigmaPerLinePair)) / 50;
        var high = step;
        while (high < cutOff && At(high) >= leastContrast)
        {
            high += step;
        }

        var low = high - step;
        while (high - low > 1e-7 * high)
        {
            var middle = (low + high) / 2;
            (low, high) = At(middle) >= leastContrast ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private double Transfer(double sigma, double u)
    {
        if (sigma >= 2)
        {
            return 0;
        }

        // So many fringes across the opening that nothing is left of the pattern (their contrast falls as the power −3/2 of the phase).
        if (u * sigma * (1 - (sigma / 2)) > 3 * nodes.Length)
        {
            return 0;
        }

        var alpha = Math.Acos(sigma / 2);
        var sum = 0.0;
        for (var i = 0; i < nodes.Length; i++)
        {
            var (sine, cosine) = Math.SinCos(alpha * nodes[i]);
            sum += weights[i] * sine * sine * Math.Cos(u * sigma * (cosine - (sigma / 2)));
        }

        return 4 / Math.PI * alpha * sum;
    }
}
