using System.Runtime.InteropServices;
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

    private readonly EvidenceGroup[] groups;

    private LaplaceFit(BeliefKey[] keys, double[] means, double[] prior, EvidenceRow[] rows, EvidenceGroup[] groups)
    {
        this.groups = groups;
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

    /// <param name="evidence">In the order of the ids.</param>
    /// <param name="asOf">The instant it is aged to.</param>
    /// <param name="prior">What is believed without it.</param>
    public static LaplaceFit Of(Evidence[] evidence, DateTimeOffset asOf, PriorBeliefs prior)
    {
        var spreads = new SortedDictionary<BeliefKey, double>();
        // What bears on a sheet is looked up once for all that are alike; what a label says of its box counts as it was said last.
        var kinds = new Dictionary<(string Box, string? Camera, string? Sky, bool Metered, double Bottle), HashSet<BeliefKey>>();
        var labels = new Dictionary<string, (Stops? Speed, Stops? Failure)>(StringComparer.Ordinal);
        foreach (var one in evidence)
        {
            var label = (one.LabelSpread, one.FailureSpread);
            var saidBefore = labels.TryGetValue(one.Box, out var before) && before == label;
            labels[one.Box] = label;
            if (!kinds.TryGetValue(KindOf(one), out var bearing))
            {
                kinds[KindOf(one)] = bearing = [.. Bearing.OnSheet(one.Conditions(), one.Doublings).Select(pair => pair.Key)];
                saidBefore = false;
            }

            foreach (var tone in one.Tones)
            {
                if (Bearing.OnTone(one.Box, tone.Rendering) is { } end)
                {
                    saidBefore &= !bearing.Add(end);
                }

                if (tone.FlashShare > 0)
                {
                    saidBefore &= !bearing.Add(new BeliefKey(BeliefKind.Flash, ""));
                }
            }

            if (saidBefore)
            {
                continue;
            }

            var conditions = one.Conditions();
            foreach (var key in bearing)
            {
                spreads[key] = conditions.Said(key.Kind)?.Value ?? spreads.GetValueOrDefault(key, prior.Of(key.Kind).Value);
            }
        }

        BeliefKey[] keys = [.. spreads.Keys];
        var places = keys.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        var groups = new Dictionary<(string Box, string? Camera, string? Sky, bool Metered, double Bottle), EvidenceGroup>();
        var rows = new EvidenceRow[evidence.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            var one = evidence[i];
            var kind = KindOf(one);
            if (!groups.TryGetValue(kind, out var group))
            {
                groups[kind] = group = new EvidenceGroup(one, places);
            }

            rows[i] = new EvidenceRow(one, group, WorthOf(one, asOf, prior));
        }

        var fit = new LaplaceFit(
            keys,
            [.. keys.Select(key => prior.MeanOf(key.Kind).Value)],
            [.. spreads.Values.Select(spread => Math.Max(1e-3, spread))],
            rows,
            [.. groups.Values]);
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
        row.TakeOff(Flat(less), right);
        var moved = SymmetricMatrix.Solve(Factor(less), right);
        var sum = 0.0;
        for (var i = 0; i < loads.Length; i++)
        {
            sum += loads[i] * (State[i] + moved[i]);
        }

        return sum;
    }

    private static (string Box, string? Camera, string? Sky, bool Metered, double Bottle) KindOf(Evidence one)
        => (one.Box, one.Camera, one.Sky, one.Metered, one.SheetsInBottle);

    private static Span<double> Flat(double[,] matrix) => MemoryMarshal.CreateSpan(ref matrix[0, 0], matrix.Length);

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
        var (scatters, readings) = (default(AitkenStep), default(AitkenStep));
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

            var (scatter, reading) = Scales(scatterWorth);
            largest = Math.Max(largest, Math.Max(Math.Abs(scatter - ScatterScale), Math.Abs(reading - ReadingScale)));
            ScatterScale = Scale(scatters.Next(ScatterScale, scatter));
            ReadingScale = Scale(readings.Next(ReadingScale, reading));
            if (largest < Settled)
            {
                break;
            }
        }

        Gather(gradient);
        Covariance = SymmetricMatrix.Inverse(Factor(information));
    }

    private (double Scatter, double Reading) Scales(double worth)
    {
        var (scatter, scatterCount, reading, readingCount) = (worth, worth, 2 * worth, 2 * worth);
        foreach (var row in Rows)
        {
            scatter += row.ScatterSums.Squares;
            scatterCount += row.ScatterSums.Count;
            reading += row.ReadingSums.Squares;
            readingCount += row.ReadingSums.Count;
        }

        return (Scale(scatter / scatterCount), Scale(reading / readingCount));
    }

    private static double Scale(double computed) => Math.Clamp(computed, 0.1, 20);

    private void Gather(double[] gradient)
    {
        Array.Clear(information);
        for (var i = 0; i < Keys.Length; i++)
        {
            var precision = 1 / (PriorSpreads[i] * PriorSpreads[i]);
            information[i, i] = precision;
            gradient[i] = precision * (PriorMeans[i] - State[i]);
        }

        foreach (var group in groups)
        {
            group.Begin(State, Flat(Covariance));
        }

        foreach (var row in Rows)
        {
            row.Weigh(State, ScatterScale, ReadingScale);
        }

        foreach (var group in groups)
        {
            group.Spread(Flat(information), gradient);
        }
    }
}
