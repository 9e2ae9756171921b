namespace Foramen.Cli.Output;

/// <summary>What <c>foramen paper --json</c> says.</summary>
internal sealed record PaperReport
{
    public required string Name { get; init; }

    public required string Kind { get; init; }

    public required double DMin { get; init; }

    public required double DMax { get; init; }

    /// <summary>ISO 6846 speed P in 3000 K light at a second; null for direct-positive paper.</summary>
    public double? IsoSpeed { get; init; }

    /// <summary>ISO 6846 range R, or its mirror.</summary>
    public required double IsoRange { get; init; }

    public required double RangeStops { get; init; }

    public required string Failure { get; init; }

    /// <summary>Standard deviation of the speed, stops.</summary>
    public required double SpeedSdStops { get; init; }

    public required IReadOnlyList<PaperIndexReport> ExposureIndices { get; init; }

    public required IReadOnlyList<PaperFlashReport> Flash { get; init; }
}
