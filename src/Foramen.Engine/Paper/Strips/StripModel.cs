using MathNet.Numerics;
using static Foramen.Engine.Paper.StripParameters;

namespace Foramen.Engine.Paper;

/// <summary>
/// Residuals of strips and priors. Densities have their stated spread, widened by the spread of their exposure times the local slope, by the family's
/// own misfit and by a common scale, and count less the further off they are (Huber's weights, c = 1.5: P. J. Huber, Ann. Math. Stat. 35, 73, 1964). What an
/// eye told apart, or did not, is a bound: √(−2 ln Φ(z)), z the ln of the difference over its threshold in standard deviations.
/// </summary>
internal sealed class StripModel
{
    private const double HuberLimit = 1.5;

    private readonly PaperKind kind;
    private readonly StripRows rows;
    private readonly StripPrior prior;
    private readonly double[] spreads;
    private readonly double[] weights;

    public StripModel(PaperKind kind, StripRows rows, StripPrior prior)
    {
        this.kind = kind;
        this.rows = rows;
        this.prior = prior;
        spreads = [.. rows.Patches.Select(row => Math.Sqrt((row.Spread * row.Spread) + (prior.CurveSpread * prior.CurveSpread)))];
        weights = new double[spreads.Length];
        Array.Fill(weights, 1);
    }

    /// <summary>Unknowns.</summary>
    public int Count => FirstLight + rows.LightSpreads.Length;

    /// <summary>Residuals.</summary>
    public int Rows => spreads.Length + rows.Seen.Count + Count;

    /// <summary>How far each density is believed, 0 to 1.</summary>
    public IReadOnlyList<double> Weights => weights;

    public void Evaluate(ReadOnlySpan<double> free, Span<double> residuals, Span<double> jacobian)
    {
        var count = Count;
        jacobian.Clear();
        var shape = Shape(kind, free);
        Span<double> gradient = stackalloc double[CurveCount];
        Span<double> other = stackalloc double[CurveCount];
        for (var i = 0; i < spreads.Length; i++)
        {
            var row = rows.Patches[i];
            var x = Exposure(row.LgExposure, row.FailureLoad, row.Strip, free);
            var (density, slope) = DensityAndGradient(shape, x, gradient);
            var factor = Math.Sqrt(weights[i]) / spreads[i];
            residuals[i] = factor * (row.Density - density);
            Fill(jacobian.Slice(i * count, count), gradient, -factor, -factor * slope * row.FailureLoad, row.Strip, -factor * slope);
        }

        for (var i = 0; i < rows.Seen.Count; i++)
        {
            var row = rows.Seen[i];
            var (first, firstSlope) = DensityAndGradient(shape, Exposure(row.First.LgExposure, row.First.FailureLoad, row.Strip, free), gradient);
            var (second, secondSlope) = DensityAndGradient(shape, Exposure(row.Second.LgExposure, row.Second.FailureLoad, row.Strip, free), other);
            var difference = Math.Abs(second - first) < 1e-12 ? 1e-12 * (kind == PaperKind.NegativeWorking ? 1 : -1) : second - first;
            var sign = row.Seen ? 1 : -1;
            var z = sign * Math.Log(Math.Abs(difference) / row.Threshold) / EyeReading.ThresholdLnSpread;
            var (residual, byZ) = Bound(z);
            var at = spreads.Length + i;
            residuals[at] = residual;
            var factor = byZ * sign / EyeReading.ThresholdLnSpread / difference;
            for (var j = 0; j < CurveCount; j++)
            {
                other[j] -= gradient[j];
            }

            Fill(
                jacobian.Slice(at * count, count),
                other,
                factor,
                factor * ((secondSlope * row.Second.FailureLoad) - (firstSlope * row.First.FailureLoad)),
                row.Strip,
                factor * (secondSlope - firstSlope));
        }

        Prior(free, residuals[^count..], jacobian[^(count * count)..]);
    }

    /// <summary>Weighs the densities anew at a fit, with a common scale of their spreads; says how much changed.</summary>
    public double Reweigh(ReadOnlySpan<double> free, double scale)
    {
        var shape = Shape(kind, free);
        var change = 0.0;
        for (var i = 0; i < spreads.Length; i++)
        {
            var row = rows.Patches[i];
            var x = Exposure(row.LgExposure, row.FailureLoad, row.Strip, free);
            var byExposure = double.IsFinite(x) ? shape.Slope(x) * row.LgSpread : 0;
            var spread = scale * Math.Sqrt((row.Spread * row.Spread) + (byExposure * byExposure) + (prior.CurveSpread * prior.CurveSpread));
            var off = Math.Abs(row.Density - DensityAt(shape, x)) / spread;
            var weight = off <= HuberLimit ? 1 : HuberLimit / off;
            change = Math.Max(change, Math.Max(Math.Abs(weight - weights[i]), Math.Abs((spread / spreads[i]) - 1)));
            weights[i] = weight;
            spreads[i] = spread;
        }

        return change;
    }

    /// <summary>Sum of the densities' weighted squares, and how many parameters they decided (the trace of their share of the information).</summary>
    public (double Squares, double Decided) DensitySums(double[] free, double[,] covariance)
    {
        var residuals = new double[Rows];
        var jacobian = new double[Rows * Count];
        Evaluate(free, residuals, jacobian);
        var (squares, decided) = (0.0, 0.0);
        for (var i = 0; i < spreads.Length; i++)
        {
            squares += residuals[i] * residuals[i];
            var row = jacobian.AsSpan(i * Count, Count);
            for (var a = 0; a < Count; a++)
            {
                for (var b = 0; b < Count; b++)
                {
                    decided += row[a] * covariance[a, b] * row[b];
                }
            }
        }

        return (squares, decided);
    }

    private static double Exposure(double lgExposure, double load, int strip, ReadOnlySpan<double> free)
        => lgExposure + (free[Failure] * load) + free[FirstLight + strip];

    internal static double DensityAt(CurveShape shape, double x)
        => double.IsNegativeInfinity(x) ? shape.Unexposed
            : double.IsPositiveInfinity(x) ? shape.Min + shape.Min + shape.Net - shape.Unexposed
            : shape.Density(x);

    private static (double Density, double Slope) DensityAndGradient(CurveShape shape, double x, Span<double> gradient)
    {
        if (double.IsFinite(x))
        {
            shape.Gradient(x, gradient);
            return (shape.Density(x), shape.Slope(x));
        }

        gradient.Clear();
        gradient[LnMin] = shape.Min;
        gradient[LnNet] = double.IsNegativeInfinity(x) == (shape.Kind == PaperKind.NegativeWorking) ? 0 : shape.Net;
        return (DensityAt(shape, x), 0);
    }

    private static void Fill(
        Span<double> row, ReadOnlySpan<double> gradient, double factor, double byFailure, int strip, double byLight)
    {
        for (var j = 0; j < CurveCount; j++)
        {
            row[j] = factor * gradient[j];
        }

        row[Failure] = byFailure;
        row[FirstLight + strip] = byLight;
    }

    /// <summary>√(−2 ln Φ(z)) and its derivative.</summary>
    private static (double Residual, double ByZ) Bound(double z)
    {
        if (z > 6)
        {
            return (0, 0);
        }

        if (z < -30)
        {
            // Far outside −2 ln Φ(z) is z² to a few per cent, and its root a straight line.
            return (-z, -1);
        }

        var below = 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
        var residual = Math.Sqrt(-2 * Math.Log(below));
        var density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        return (residual, -density / (below * residual));
    }

    private void Prior(ReadOnlySpan<double> free, Span<double> residuals, Span<double> jacobian)
    {
        var count = Count;
        ReadOnlySpan<(double Mean, double Sd)> curve =
            [prior.LnMinimumDensity, prior.LnNetDensity, prior.LnSteepness, prior.MidLgExposure, prior.LnAsymmetry];
        for (var j = 0; j < count; j++)
        {
            var (mean, sd) = j < CurveCount ? curve[j] : (0, j == Failure ? prior.FailureSpread : rows.LightSpreads[j - FirstLight]);
            residuals[j] = (free[j] - mean) / sd;
            jacobian[(j * count) + j] = 1 / sd;
        }
    }
}
