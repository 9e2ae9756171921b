namespace Foramen.Cli.Output;

/// <summary>What <c>foramen strip fit --json</c> says.</summary>
internal sealed record StripFitReport
{
    public required string Kind { get; init; }

    public required double DMin { get; init; }

    public required double DMax { get; init; }

    /// <summary>ISO 6846 speed P in lamp light at a second; null for direct-positive paper.</summary>
    public EstimateReport? IsoSpeed { get; init; }

    /// <summary>ISO 6846 range R or its mirror; null where the strips do not reach its ends.</summary>
    public EstimateReport? IsoRange { get; init; }

    /// <summary>Steepest slope, density for a factor of ten in exposure.</summary>
    public required EstimateReport SteepestSlope { get; init; }

    /// <summary>The camera's exposure index at the strip's own time and light.</summary>
    public required EstimateReport ExposureIndex { get; init; }

    public required double IndexAtSeconds { get; init; }

    public required double IndexLightKelvin { get; init; }

    /// <summary>Standard deviation of the speed, the doubt about the light included.</summary>
    public required double SpeedSdStops { get; init; }

    public required StripFailureReport Failure { get; init; }

    /// <summary>How many times as much the patches scatter as was stated.</summary>
    public required double Scatter { get; init; }

    public required IReadOnlyList<StripPatchReport> Patches { get; init; }

    /// <summary>The strip that would tell most about the curve.</summary>
    public required StripNextReport NextForCurve { get; init; }

    /// <summary>The strip that would tell most about failure.</summary>
    public required StripNextReport NextForFailure { get; init; }
}
