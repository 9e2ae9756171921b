using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// How many times as far off as the bands say a tone may lie and the sheet is still kept: learned from which sheets were kept. The posterior of its
/// logarithm is summed on a grid (exact Bayes, so the order of the sheets does not matter) under a normal prior of mean zero and spread 0.25.
/// </summary>
public sealed record ToleranceBelief
{
    private const int Points = 41;
    private const double Reach = 1.0;
    private const double PriorSpread = 0.25;

    // Whoever judges also errs; no single sheet may rule a tolerance out.
    private const double Slip = 0.03;

    private static readonly double[] Factors = [.. Enumerable.Range(0, Points).Select(i => Math.Exp(Log(i)))];

    private ToleranceBelief(double factor, double logSpread)
    {
        Factor = factor;
        LogSpread = logSpread;
    }

    /// <summary>The best guess; 1 before any sheet.</summary>
    public double Factor { get; }

    /// <summary>Standard deviation of its natural logarithm.</summary>
    public double LogSpread { get; }

    internal static ToleranceBelief From(LaplaceFit fit)
    {
        var logs = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            logs[i] = -Log(i) * Log(i) / (2 * PriorSpread * PriorSpread);
        }

        var inside = new double[Points];
        foreach (var row in fit.Rows)
        {
            if (row.Evidence.Kept is not { } kept || row.Evidence.Tones.Count == 0
                || row.Evidence.Tones.Any(tone => tone.Limit != ObservedLimit.Exact || tone.BandLow is null || tone.BandHigh is null))
            {
                continue;
            }

            Array.Fill(inside, 1);
            for (var t = 0; t < row.Evidence.Tones.Count; t++)
            {
                var tone = row.Evidence.Tones[t];
                var (landed, spread) = row.Landed(t, fit.State);
                var (low, high, middle) = (tone.BandLow!.Value.Value / spread, tone.BandHigh!.Value.Value / spread, landed / spread);
                for (var i = 0; i < Points; i++)
                {
                    inside[i] *= NormalTable.BelowExactly((Factors[i] * high) - middle) - NormalTable.BelowExactly((Factors[i] * low) - middle);
                }
            }

            for (var i = 0; i < Points; i++)
            {
                logs[i] += row.Worth * Math.Log(Slip + ((1 - (2 * Slip)) * (kept ? inside[i] : 1 - inside[i])));
            }
        }

        var highest = logs.Max();
        var (total, mean, square) = (0.0, 0.0, 0.0);
        for (var i = 0; i < Points; i++)
        {
            var weight = Math.Exp(logs[i] - highest);
            total += weight;
            mean += weight * Log(i);
            square += weight * Log(i) * Log(i);
        }

        mean /= total;
        return new ToleranceBelief(Math.Exp(mean), Math.Sqrt(Math.Max(0, (square / total) - (mean * mean))));
    }

    private static double Log(int point) => Reach * ((2.0 * point / (Points - 1)) - 1);
}
