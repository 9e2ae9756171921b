using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// How good stated odds were. Brier's score, mean of (odds − outcome)² (G. W. Brier, Mon. Wea. Rev. 78, 1, 1950), and its parts by groups of equal odds,
/// reliability − resolution + uncertainty (A. H. Murphy, J. Appl. Meteor. 12, 595, 1973); the log score −ln of the probability given to what happened;
/// the reliability diagram.
/// </summary>
/// <remarks>Murphy's parts are exact where sheets in a group have equal odds; grouped coarsely they are exact for the odds rounded to the group's mean.</remarks>
public sealed record ForecastScores
{
    /// <summary>Fewest sheets from which a reliability diagram says anything (an assumption).</summary>
    public const int FewestForDiagram = 20;

    private const double SmallestChance = 1e-6;

    private ForecastScores(int sheets, double brier, double log)
    {
        Sheets = sheets;
        Brier = brier;
        LogScore = log;
    }

    /// <summary>How many sheets had odds.</summary>
    public int Sheets { get; }

    /// <summary>Brier's score, 0 (best) to 1.</summary>
    public double Brier { get; }

    /// <summary>Log score in nats, zero or more; a chance of nothing counts as a millionth.</summary>
    public double LogScore { get; }

    /// <summary>Murphy's reliability: 0 where odds mean what they say.</summary>
    public double Reliability { get; private init; }

    /// <summary>Murphy's resolution: more is better.</summary>
    public double Resolution { get; private init; }

    /// <summary>Murphy's uncertainty: the score of always stating the share of keepers.</summary>
    public double Uncertainty { get; private init; }

    /// <summary>Mean distance between odds and share kept over the bars, weighted by sheets.</summary>
    public double CalibrationError { get; private init; }

    /// <summary>The reliability diagram; empty bars left out.</summary>
    public IReadOnlyList<ReliabilityBin> Bins { get; private init; } = [];

    /// <summary>Whether there are sheets enough to read the diagram.</summary>
    public bool IsTelling => Sheets >= FewestForDiagram;

    /// <summary>The scores of these sheets.</summary>
    /// <param name="outcomes">Sheets with odds.</param>
    /// <param name="bars">Bars of the diagram, 2 to 50.</param>
    /// <returns>Null where there is none.</returns>
    public static ForecastScores? Of(IReadOnlyCollection<ForecastOutcome> outcomes, int bars = 10)
    {
        Guard.Within(bars, 2, 50, "the number of bars");
        if (outcomes.Count == 0)
        {
            return null;
        }

        var count = (double)outcomes.Count;
        var kept = outcomes.Average(Happened);
        var brier = outcomes.Average(one => Square(one.Odds.Fraction - Happened(one)));
        var log = outcomes.Average(one => -Math.Log(Math.Max(SmallestChance, one.Keeper ? one.Odds.Fraction : 1 - one.Odds.Fraction)));
        var (reliability, resolution) = (0.0, 0.0);
        foreach (var group in outcomes.GroupBy(one => one.Odds.Fraction))
        {
            var share = group.Average(Happened);
            reliability += group.Count() / count * Square(group.Key - share);
            resolution += group.Count() / count * Square(share - kept);
        }

        var bins = outcomes
            .GroupBy(one => Math.Min(bars - 1, (int)(one.Odds.Fraction * bars)))
            .OrderBy(group => group.Key)
            .Select(group => new ReliabilityBin(
                Probability.FromFraction(group.Key / (double)bars),
                Probability.FromFraction((group.Key + 1) / (double)bars),
                group.Count(),
                Probability.FromFraction(Math.Clamp(group.Average(one => one.Odds.Fraction), 0, 1)),
                Probability.FromFraction(group.Average(Happened)),
                ShareInterval.Wilson(group.Count(one => one.Keeper), group.Count())))
            .ToList();
        return new ForecastScores(outcomes.Count, brier, log)
        {
            Reliability = reliability,
            Resolution = resolution,
            Uncertainty = kept * (1 - kept),
            Bins = bins,
            CalibrationError = bins.Sum(bin => bin.Sheets / count * Math.Abs(bin.MeanOdds.Fraction - bin.KeptShare.Fraction)),
        };
    }

    private static double Happened(ForecastOutcome outcome) => outcome.Keeper ? 1 : 0;

    private static double Square(double value) => value * value;
}
