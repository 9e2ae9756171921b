using System.Globalization;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Paper;

/// <summary>
/// The strip to make next: of all that could be made by hand, the one after which least doubt is expected to be left. The expected variance is worked out by the
/// information of the planned patches (K. Chaloner and I. Verdinelli, Statist. Sci. 10, 273, 1995), averaged over where the curve may lie; of strips that
/// leave as little to five per cent and take away as much to a tenth, the one that takes least time.
/// </summary>
public sealed record StripAdvice
{
    private const int PatchCount = 8;
    private const double DensitySpread = 0.05;
    private const double LongestSeconds = 1800;
    private static readonly double[] FirstSeconds = [2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96];
    private static readonly double[] StepStops = [1.0 / 3, 0.5, 2.0 / 3, 1, 1.5];
    private static readonly double[] Dimming = [0, 1, 2, 3, 4, 5, 6];

    // Five-point Gauss–Hermite rule for a normal distribution (Abramowitz and Stegun 25.4.46 and table 25.10).
    private static readonly (double At, double Weight)[] Nodes =
    [
        (-2.856970013872806, 0.011257411327720689), (-1.355626179974266, 0.2220759220056126), (0, 0.5333333333333333),
        (1.355626179974266, 0.2220759220056126), (2.856970013872806, 0.011257411327720689),
    ];

    private StripAdvice(StripPlan plan, Stops dimmer, double now, double after)
    {
        Plan = plan;
        Dimmer = dimmer;
        SpreadNow = now;
        SpreadAfter = after;
    }

    /// <summary>The strip.</summary>
    public StripPlan Plan { get; }

    /// <summary>How much less light it should have than the first strip: a smaller hole, a grey filter, shade.</summary>
    public Stops Dimmer { get; }

    /// <summary>Doubt now: root mean square of the three exposures in stops (the light's own apart), or the standard deviation of the exponent.</summary>
    public double SpreadNow { get; }

    /// <summary>Doubt to be expected after it.</summary>
    public double SpreadAfter { get; }

    /// <summary>The most informative next strip.</summary>
    /// <param name="strips">What there is; at least one strip (without readings, if need be) that says what light there is.</param>
    /// <param name="kind">Negative-working or direct-positive.</param>
    /// <param name="sensitivity">The paper's colour sensitivity.</param>
    /// <param name="goal">What is to be found out.</param>
    /// <param name="prior">What is thought of the paper.</param>
    /// <exception cref="RefusalException">A strip holds what cannot be.</exception>
    public static StripAdvice Next(IReadOnlyList<Strip> strips, PaperKind kind, PaperSensitivity sensitivity, StripGoal goal, StripPrior? prior = null)
    {
        var assumed = prior ?? StripPrior.Usual;
        return From(StripPosterior.Of(kind, StripRows.Of(strips, kind, sensitivity, assumed.Failure), assumed), strips, sensitivity, goal);
    }

    /// <summary>The most informative strip to make after those that were fitted.</summary>
    /// <param name="fit">What is known.</param>
    /// <param name="goal">What is to be found out.</param>
    public static StripAdvice After(StripFit fit, StripGoal goal) => From(fit.Posterior, fit.Strips, fit.Sensitivity, goal);

    /// <summary>One sentence: what to make.</summary>
    public string Describe()
    {
        var light = Dimmer.Value > 0
            ? string.Create(CultureInfo.InvariantCulture, $"in {Dimmer.Value:0} stops less light")
            : "in the same light";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Make next a strip of {Plan.Steps.Count} patches from {Plan.Steps[0].Total.Seconds:0.#} s, {Plan.Ratio.Value:0.##} stops apart (to {Plan.Longest.Seconds:0} s), {light}.");
    }

    internal static StripAdvice From(StripPosterior posterior, IReadOnlyList<Strip> strips, PaperSensitivity sensitivity, StripGoal goal)
    {
        var search = new StripSearch(posterior, StripRows.LgLight(strips[0], sensitivity), goal, Math.Max(0.05, strips[0].LightSpread.Value) * Math.Log10(2));
        var candidates = new List<(double Seconds, Stops Ratio, double Dimmer, double Variance, double Longest)>();
        foreach (var dimmer in goal == StripGoal.Failure ? Dimming : [0])
        {
            foreach (var ratio in StepStops)
            {
                foreach (var first in FirstSeconds)
                {
                    var longest = first * Math.Pow(2, ratio * (PatchCount - 1));
                    if (longest <= LongestSeconds && first * (Math.Pow(2, ratio) - 1) >= StripPlan.LeastByHand.Seconds)
                    {
                        candidates.Add((first, Stops.FromValue(ratio), dimmer, search.ExpectedVariance(first, ratio, dimmer), longest));
                    }
                }
            }
        }

        var least = candidates.Min(one => one.Variance);
        var now = search.VarianceNow();
        var chosen = candidates.Where(one => one.Variance <= Math.Min(1.05 * least, least + (0.1 * Math.Max(0, now - least)))).MinBy(one => one.Longest);
        return new StripAdvice(
            StripPlan.Create(Duration.FromSeconds(chosen.Seconds), chosen.Ratio, PatchCount, StripWay.HoleAsShutter),
            Stops.FromValue(chosen.Dimmer),
            search.Spread(now),
            search.Spread(chosen.Variance));
    }

    /// <summary>The variance to be expected after a strip, out of the information that it would add.</summary>
    private sealed class StripSearch(StripPosterior posterior, double lgLight, StripGoal goal, double lightSpread)
    {
        private readonly Matrix<double> before = Before(posterior, goal);
        private readonly double[][] nodes = [.. Nodes.Select(node => Moved(posterior, node.At))];

        public double VarianceNow() => Nodes.Index().Sum(pair => pair.Item.Weight * Left(before, nodes[pair.Index]));

        public double ExpectedVariance(double first, double ratio, double dimmer)
        {
            var sum = 0.0;
            for (var n = 0; n < nodes.Length; n++)
            {
                sum += Nodes[n].Weight * Left(After(nodes[n], first, ratio, dimmer), nodes[n]);
            }

            return sum;
        }

        public double Spread(double variance) => goal == StripGoal.Failure ? Math.Sqrt(variance) : Math.Sqrt(variance / 3) / Math.Log10(2);

        // No strip in the same light makes that light better known, so for the curve the choice is made as if it were: its doubt would hide all others.
        private static Matrix<double> Before(StripPosterior posterior, StripGoal goal)
        {
            var information = Matrix<double>.Build.DenseOfArray(posterior.Covariance).Inverse();
            for (var i = StripParameters.FirstLight; goal == StripGoal.Curve && i < information.RowCount; i++)
            {
                information[i, i] += 1e8;
            }

            return information;
        }

        // The curve moved along exposure as far as that is in doubt, all else following by its correlation.
        private static double[] Moved(StripPosterior posterior, double deviations)
        {
            var moved = (double[])posterior.Free.Clone();
            var sd = Math.Sqrt(posterior.Covariance[StripParameters.Middle, StripParameters.Middle]);
            for (var i = 0; i < moved.Length; i++)
            {
                moved[i] += deviations * posterior.Covariance[i, StripParameters.Middle] / sd;
            }

            return moved;
        }

        private Matrix<double> After(double[] free, double first, double ratio, double dimmer)
        {
            // Under the same light the doubt about it is shared with the strip that is there; another light brings its own.
            var count = free.Length;
            var own = dimmer > 0;
            var size = count + (own ? 1 : 0);
            var shape = posterior.ShapeAt(free);
            var gradient = new double[StripParameters.CurveCount];
            var information = Matrix<double>.Build.Dense(size, size);
            information.SetSubMatrix(0, 0, before);
            if (own)
            {
                information[count, count] = 1 / (lightSpread * lightSpread);
            }

            var row = new double[size];
            for (var i = 0; i < PatchCount; i++)
            {
                var (x, load) = StripRows.At(lgLight - (dimmer * Math.Log10(2)), first * Math.Pow(2, ratio * i), posterior.Prior.Failure);
                x += (free[StripParameters.Failure] * load) + (own ? 0 : free[StripParameters.FirstLight]);
                shape.Gradient(x, gradient);
                Array.Clear(row);
                for (var j = 0; j < gradient.Length; j++)
                {
                    row[j] = gradient[j] / DensitySpread;
                }

                var slope = shape.Slope(x) / DensitySpread;
                row[StripParameters.Failure] = slope * load;
                row[own ? count : StripParameters.FirstLight] = slope;
                for (var a = 0; a < size; a++)
                {
                    for (var b = 0; b < size; b++)
                    {
                        information[a, b] += row[a] * row[b];
                    }
                }
            }

            return information;
        }

        private double Left(Matrix<double> information, double[] free)
        {
            var covariance = information.Inverse();
            if (goal == StripGoal.Failure)
            {
                return covariance[StripParameters.Failure, StripParameters.Failure];
            }

            Func<double[], double>[] wanted =
            [
                at => posterior.ShapeAt(at) is var shape ? shape.LgExposureAt(StripFit.FirstToneShare(shape)) : 0,
                at => StripIndex.LgMidTone(posterior.ShapeAt(at)),
                at => posterior.ShapeAt(at).LgExposureAt(IsoPaperMeasures.DarkestShareOfNetDensity),
            ];
            var sum = 0.0;
            foreach (var function in wanted)
            {
                var gradient = Vector<double>.Build.Dense(information.RowCount);
                StripPosterior.Gradient(function, free).CopyTo(gradient.AsArray(), 0);
                sum += gradient * covariance * gradient;
            }

            return sum;
        }
    }
}
