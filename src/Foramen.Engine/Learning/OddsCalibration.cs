using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// What the user's own sheets say of odds that were stated to them: a shift of their logit, so that odds which were too low come up and those too high come down.
/// The posterior of the shift is summed on a grid (exact Bayes, order-free) under a normal prior of mean zero and spread 0.5; the odds are
/// averaged over it. Platt's scaling with its slope held at one.
/// </summary>
public sealed record OddsCalibration
{
    private const int Points = 41;
    private const double Reach = 2;
    private const double PriorSpread = 0.5;

    private readonly double[] weights;

    private OddsCalibration(double[] weights)
    {
        this.weights = weights;
        Shift = weights.Select((weight, i) => weight * At(i)).Sum();
    }

    /// <summary>The shift of the logit; 0 before any sheet.</summary>
    public double Shift { get; }

    /// <summary>The calibration after these sheets; give it the odds as they were before any calibration, and only sheets that nothing else spoilt.</summary>
    public static OddsCalibration From(IEnumerable<ForecastOutcome> outcomes)
    {
        var logs = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            logs[i] = -At(i) * At(i) / (2 * PriorSpread * PriorSpread);
        }

        foreach (var outcome in outcomes)
        {
            var logit = Logit(outcome.Odds.Fraction);
            for (var i = 0; i < Points; i++)
            {
                var chance = Chance(logit + At(i));
                logs[i] += Math.Log(outcome.Keeper ? chance : 1 - chance);
            }
        }

        var highest = logs.Max();
        var total = logs.Sum(log => Math.Exp(log - highest));
        return new OddsCalibration([.. logs.Select(log => Math.Exp(log - highest) / total)]);
    }

    /// <summary>The odds as they should be stated.</summary>
    public Probability Calibrated(Probability odds)
    {
        var logit = Logit(odds.Fraction);
        return Probability.FromFraction(Math.Clamp(weights.Select((weight, i) => weight * Chance(logit + At(i))).Sum(), 0, 1));
    }

    /// <inheritdoc/>
    public bool Equals(OddsCalibration? other) => other is not null && weights.AsSpan().SequenceEqual(other.weights);

    /// <inheritdoc/>
    public override int GetHashCode() => Shift.GetHashCode();

    private static double At(int point) => Reach * ((2.0 * point / (Points - 1)) - 1);

    private static double Logit(double odds)
    {
        var inside = Math.Clamp(odds, 0.005, 0.995);
        return Math.Log(inside / (1 - inside));
    }

    private static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));
}
