using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// Laplace's approximation of all beliefs from all evidence at once: Newton's method to the mode, the inverse of the information there as covariance (Tierney
/// and Kadane, J. Am. Stat. Assoc. 81, 82, 1986). Each sheet's own scatter is integrated out; the scales of scatter and readings are found with
/// it by expectation-maximisation under a prior worth some sheets. Old evidence counts by a power of its likelihood (Ibrahim and Chen, Stat. Sci. 15, 46, 2000).
/// Evidence is taken in the order of its ids, so the result is a function of the set alone.
/// </summary>
internal sealed class LaplaceFit
{
    private const int MostSteps = 40;
    // Stops, and parts of a scale: far below anything that can be seen.
    private const double Settled = 1e-4;

    private readonly double[,] information;

    private LaplaceFit(BeliefKey[] keys, double[] means, double[] prior, EvidenceRow[] rows)
    {
        PriorMeans = means;
        Keys = keys;
        PriorSpreads = prior;
        Rows = rows;
        State = [.. means];
        information = new double[keys.Length, keys.Length];
        Covariance = new double[keys.Length, keys.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            Covariance[i, i] = prior[i] * prior[i];
        }
    }

    public BeliefKey[] Keys { get; }

    public double[] PriorMeans { get; }

    public double[] PriorSpreads { get; }

    public double[] State { get; }

    public double[,] Covariance { get; private set; }

    public EvidenceRow[] Rows { get; }

    public double ScatterScale { get; private set; } = 1;

    public double ReadingScale { get; private set; } = 1;

    public static LaplaceFit Of(IReadOnlyCollection<Evidence> evidence, DateTimeOffset asOf, PriorBeliefs prior)
    {
        var ordered = evidence.OrderBy(one => one.Id, StringComparer.Ordinal).ToList();
        var spreads = new SortedDictionary<BeliefKey, double>();
        foreach (var one in ordered)
        {
            var conditions = one.Conditions();
            foreach (var key in Bearing.OnSheet(conditions, one.Doublings).Select(pair => pair.Key)
                .Concat(one.Tones.Select(tone => Bearing.OnTone(one.Box, tone.Rendering)).OfType<BeliefKey>())
                .Concat(one.Tones.Any(tone => tone.FlashShare > 0) ? [new BeliefKey(BeliefKind.Flash, "")] : []))
            {
                spreads[key] = conditions.Said(key.Kind)?.Value ?? spreads.GetValueOrDefault(key, prior.Of(key.Kind).Value);
            }
        }

        BeliefKey[] keys = [.. spreads.Keys];
        var places = keys.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        var fit = new LaplaceFit(
            keys,
            [.. keys.Select(key => prior.MeanOf(key.Kind).Value)],
            [.. spreads.Values.Select(spread => Math.Max(1e-3, spread))],
            [.. ordered.Select(one => new EvidenceRow(one, places, WorthOf(one, asOf, prior)))]);
        fit.Run(prior.ScatterWorth);
        return fit;
    }

    /// <summary>What a linear prediction would be without one row, its weights left as they are: exact for the fit's own normal approximation.</summary>
    /// <param name="row">The row left out.</param>
    /// <param name="loads">The prediction's loads on the state.</param>
    public double Without(EvidenceRow row, double[] loads)
    {
        var less = (double[,])information.Clone();
        var right = new double[Keys.Length];
        for (var i = 0; i < row.Places.Length; i++)
        {
            right[row.Places[i]] = -row.Gradient[i];
            for (var j = 0; j < row.Places.Length; j++)
            {
                less[row.Places[i], row.Places[j]] -= row.Information[(i * row.Places.Length) + j];
            }
        }

        var moved = SymmetricMatrix.Solve(Factor(less), right);
        var sum = 0.0;
        for (var i = 0; i < loads.Length; i++)
        {
            sum += loads[i] * (State[i] + moved[i]);
        }

        return sum;
    }

    private static double[,] Factor(double[,] matrix)
        => SymmetricMatrix.Factor(matrix) ?? throw new RefusalException("The evidence cannot be weighed together; a spread among it is far too small.");

    private static double WorthOf(Evidence evidence, DateTimeOffset asOf, PriorBeliefs prior)
        => Math.Pow(0.5, Math.Max(0, (asOf - evidence.At).TotalDays) / prior.HalfLifeDays);

    private void Run(double scatterWorth)
    {
        if (Rows.Length == 0)
        {
            return;
        }

        var gradient = new double[Keys.Length];
        for (var step = 0; step < MostSteps; step++)
        {
            Gather(gradient);
            var lower = Factor(information);
            Covariance = SymmetricMatrix.Inverse(lower);
            var move = SymmetricMatrix.Solve(lower, gradient);
            var largest = 0.0;
            for (var i = 0; i < move.Length; i++)
            {
                // No belief leaps more than a few of its spreads at once; a far outlier would otherwise throw the first step.
                var limited = Math.Clamp(move[i], -3 * PriorSpreads[i], 3 * PriorSpreads[i]);
                State[i] += limited;
                largest = Math.Max(largest, Math.Abs(limited));
            }

            var (scatter, reading) = (Scale(scatterWorth, row => row.ScatterSums), Scale(2 * scatterWorth, row => row.ReadingSums));
            largest = Math.Max(largest, Math.Max(Math.Abs(scatter - ScatterScale), Math.Abs(reading - ReadingScale)));
            (ScatterScale, ReadingScale) = (scatter, reading);
            if (largest < Settled)
            {
                break;
            }
        }

        Gather(gradient);
        Covariance = SymmetricMatrix.Inverse(Factor(information));
    }

    private double Scale(double worth, Func<EvidenceRow, (double Squares, double Count)> sums)
    {
        var (squares, count) = (worth, worth);
        foreach (var row in Rows)
        {
            var (s, c) = sums(row);
            squares += s;
            count += c;
        }

        return Math.Clamp(squares / count, 0.1, 20);
    }

    private void Gather(double[] gradient)
    {
        Array.Clear(information);
        for (var i = 0; i < Keys.Length; i++)
        {
            var precision = 1 / (PriorSpreads[i] * PriorSpreads[i]);
            information[i, i] = precision;
            gradient[i] = precision * (PriorMeans[i] - State[i]);
        }

        foreach (var row in Rows)
        {
            row.Weigh(State, Covariance, ScatterScale, ReadingScale);
            for (var i = 0; i < row.Places.Length; i++)
            {
                gradient[row.Places[i]] += row.Gradient[i];
                for (var j = 0; j < row.Places.Length; j++)
                {
                    information[row.Places[i], row.Places[j]] += row.Information[(i * row.Places.Length) + j];
                }
            }
        }
    }
}
