namespace Foramen.Cli.Output;

/// <summary>What <c>foramen strip plan --json</c> says.</summary>
internal sealed record StripPlanReport
{
    /// <summary>hole, cover or uncover.</summary>
    public required string Way { get; init; }

    public required double StepStops { get; init; }

    /// <summary>All the light of each patch, counted as time.</summary>
    public required IReadOnlyList<double> Seconds { get; init; }

    public required IReadOnlyList<StripMoveReport> Moves { get; init; }

    /// <summary>All the light there is.</summary>
    public required double TotalSeconds { get; init; }
}
