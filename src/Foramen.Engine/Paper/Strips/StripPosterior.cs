using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// What strips and priors say together: the most likely parameters and, by Laplace's approximation, their covariance. Exists even for a strip that
/// says nothing: then it is the prior. The scale of the readings' spread is itself weighed between what was stated and what the patches show.
/// </summary>
internal sealed class StripPosterior
{
    private const int MostWeighings = 25;
    private static readonly double[] SteepnessesToTry = [0.6, 1.0, 1.8];

    private StripPosterior(PaperKind kind, StripRows rows, StripPrior prior, LeastSquares fit, StripModel model, double scale, double freedom)
    {
        Kind = kind;
        Rows = rows;
        Prior = prior;
        Free = fit.Parameters;
        Covariance = fit.InverseOfNormal();
        Weights = [.. model.Weights];
        Scale = scale;
        Freedom = freedom;
        Shape = StripParameters.Shape(kind, Free);
    }

    public PaperKind Kind { get; }

    public StripRows Rows { get; }

    public StripPrior Prior { get; }

    public double[] Free { get; }

    public double[,] Covariance { get; }

    public IReadOnlyList<double> Weights { get; }

    /// <summary>How many times as much the densities scatter as was stated.</summary>
    public double Scale { get; }

    /// <summary>Degrees of freedom behind <see cref="Scale"/>.</summary>
    public double Freedom { get; }

    public CurveShape Shape { get; }

    /// <exception cref="RefusalException">The search for the most likely parameters does not settle.</exception>
    public static StripPosterior Of(PaperKind kind, StripRows rows, StripPrior prior)
    {
        var model = new StripModel(kind, rows, prior);
        var best = Starts(kind, rows, prior)
            .Select(start => LeastSquares.Fit(model.Evaluate, model.Rows, start, 1e-6, 60))
            .MinBy(fit => fit.SumOfSquares)!;
        var (scale, freedom) = (1.0, prior.SpreadWorth);
        for (var i = 0; i < MostWeighings; i++)
        {
            var change = model.Reweigh(best.Parameters, scale);
            best = LeastSquares.Fit(model.Evaluate, model.Rows, best.Parameters, 1e-10, 100);
            var (squares, decided) = model.DensitySums(best.Parameters, best.InverseOfNormal());
            freedom = prior.SpreadWorth + rows.Patches.Count - decided;
            scale = Math.Sqrt((prior.SpreadWorth + (squares * scale * scale)) / freedom);
            if (change < 1e-5)
            {
                break;
            }
        }

        if (!best.Converged)
        {
            throw new RefusalException("The curve through these strips does not settle; read the patches again, or make another strip.");
        }

        return new StripPosterior(kind, rows, prior, best, model, scale, freedom);
    }

    /// <summary>A function of the parameters: its value and its standard deviation by linear propagation.</summary>
    public (double Value, double Sd) Propagate(Func<double[], double> function)
    {
        var gradient = Gradient(function, Free);
        var variance = 0.0;
        for (var i = 0; i < gradient.Length; i++)
        {
            for (var j = 0; j < gradient.Length; j++)
            {
                variance += gradient[i] * Covariance[i, j] * gradient[j];
            }
        }

        return (function(Free), Math.Sqrt(Math.Max(0, variance)));
    }

    public CurveShape ShapeAt(double[] free) => StripParameters.Shape(Kind, free);

    internal static double[] Gradient(Func<double[], double> function, double[] at)
    {
        const double Small = 1e-5;
        var gradient = new double[at.Length];
        var moved = (double[])at.Clone();
        for (var i = 0; i < at.Length; i++)
        {
            moved[i] = at[i] + Small;
            var above = function(moved);
            moved[i] = at[i] - Small;
            gradient[i] = (above - function(moved)) / (2 * Small);
            moved[i] = at[i];
        }

        return gradient;
    }

    // The middle is where a reading comes nearest to half-way; with three steepnesses around the prior's, one start lies in the right valley.
    private static IEnumerable<double[]> Starts(PaperKind kind, StripRows rows, StripPrior prior)
    {
        var (min, max) = rows.Patches.Count > 0 ? (rows.Patches.Min(row => row.Density), rows.Patches.Max(row => row.Density)) : (0, 0);
        var (low, net) = max - min > 0.6
            ? (Math.Clamp(min, 0.02, 0.3), max - min)
            : (Math.Exp(prior.LnMinimumDensity.Mean), Math.Exp(prior.LnNetDensity.Mean));
        var lit = rows.Patches.Where(row => double.IsFinite(row.LgExposure)).ToList();
        var middle = lit.Count == 0 ? Seen(rows, prior) : lit.MinBy(row => Math.Abs(row.Density - low - (net / 2))).LgExposure;
        return from steepness in SteepnessesToTry
               select StripParameters.Free(
                   new CurveShape(kind, low, Math.Clamp(net, 0.4, 3), steepness * Math.Exp(prior.LnSteepness.Mean), middle, 1), rows.LightSpreads.Length);
    }

    private static double Seen(StripRows rows, StripPrior prior)
        => rows.Seen.Count == 0 ? prior.MidLgExposure.Mean : rows.Seen.Average(row => row.Second.LgExposure);
}
