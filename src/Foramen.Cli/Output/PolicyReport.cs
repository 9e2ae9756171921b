using Foramen.Rehearsal.Runs;

namespace Foramen.Cli.Output;

/// <summary>What one policy achieved in rehearsal.</summary>
internal sealed record PolicyReport
{
    public required string Policy { get; init; }

    /// <summary>Share of keepers on sheets 1 to 5.</summary>
    public required double EarlyKeepers { get; init; }

    /// <summary>Share of keepers from sheet 6 on; null with fewer sheets.</summary>
    public double? Keepers { get; init; }

    public double? KeepersLow { get; init; }

    public double? KeepersHigh { get; init; }

    public ScoresReport? Odds { get; init; }

    public static PolicyReport Of(RehearsalScore score) => new()
    {
        Policy = score.Policy,
        EarlyKeepers = score.Early.Fraction,
        Keepers = score.Keepers?.Fraction,
        KeepersLow = score.Interval?.Low.Fraction,
        KeepersHigh = score.Interval?.High.Fraction,
        Odds = score.Scores is { } scores ? ScoresReport.Of(scores) : null,
    };
}
