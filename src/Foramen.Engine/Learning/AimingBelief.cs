using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// The user's aiming error as a scale: standard deviation of where the frame lands, in percent of the picture's side, learned from frames that were and were not
/// cut. The posterior of its logarithm is summed on a grid (exact Bayes, order-free) under a normal prior about 3 % with a factor of two (assumptions).
/// </summary>
public sealed record AimingBelief
{
    private const int Points = 61;
    private const double LowestPercent = 0.3;
    private const double HighestPercent = 30;
    private const double PriorPercent = 3;
    private static readonly double PriorLogSpread = Math.Log(2);
    private static readonly double[] Scales = [.. Enumerable.Range(0, Points).Select(point => LowestPercent * Math.Pow(HighestPercent / LowestPercent, point / (Points - 1.0)))];

    private readonly double[] weights;

    private AimingBelief(double[] weights)
    {
        this.weights = weights;
        var mean = weights.Select((weight, i) => weight * Math.Log(At(i))).Sum();
        Percent = Math.Exp(mean);
        LogSpread = Math.Sqrt(Math.Max(0, weights.Select((weight, i) => weight * Math.Pow(Math.Log(At(i)) - mean, 2)).Sum()));
    }

    /// <summary>The error, one standard deviation, percent of the side (geometric mean of the belief).</summary>
    public double Percent { get; }

    /// <summary>Standard deviation of its natural logarithm: how sure it is.</summary>
    public double LogSpread { get; }

    /// <summary>Where the error likely lies, one standard deviation to either side of <see cref="Percent"/>, percent of the side.</summary>
    public (double Low, double High) LikelyPercent => (Percent * Math.Exp(-LogSpread), Percent * Math.Exp(LogSpread));

    /// <summary>The belief after these frames.</summary>
    /// <param name="frames">For each: its smallest margin in percent of the side, and whether the subject was cut.</param>
    /// <exception cref="RefusalException">A margin outside −50 to 50 %.</exception>
    public static AimingBelief From(IEnumerable<(double MarginPercent, bool Cut)> frames)
    {
        var logs = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            var off = Math.Log(At(i) / PriorPercent) / PriorLogSpread;
            logs[i] = -off * off / 2;
        }

        foreach (var (margin, cut) in frames)
        {
            Guard.Within(margin, -50, 50, "the margin", "%");
            for (var i = 0; i < Points; i++)
            {
                // One cut in a hundred has another reason, so that no single frame rules a scale out.
                var chance = 0.005 + (0.99 * Beyond(margin, At(i)));
                logs[i] += Math.Log(cut ? chance : 1 - chance);
            }
        }

        var highest = logs.Max();
        var total = logs.Sum(log => Math.Exp(log - highest));
        return new AimingBelief([.. logs.Select(log => Math.Exp(log - highest) / total)]);
    }

    /// <summary>Probability that a frame with this smallest margin cuts the subject.</summary>
    /// <param name="marginPercent">Margin, percent of the side; negative where the subject does not fit.</param>
    public Probability ChanceOfCut(double marginPercent)
        => Probability.FromFraction(Math.Clamp(weights.Select((weight, i) => weight * Beyond(marginPercent, At(i))).Sum(), 0, 1));

    /// <inheritdoc/>
    public bool Equals(AimingBelief? other) => other is not null && weights.AsSpan().SequenceEqual(other.weights);

    /// <inheritdoc/>
    public override int GetHashCode() => Percent.GetHashCode();

    private static double At(int point) => Scales[point];

    private static double Beyond(double margin, double scale) => NormalTable.BelowExactly(-margin / scale);
}
