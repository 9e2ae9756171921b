namespace Foramen.Cli.Output;

/// <summary>One tone measured on the print.</summary>
internal sealed record ScanToneReport
{
    public required string Name { get; init; }

    public required string Rendering { get; init; }

    /// <summary>Density expected.</summary>
    public required double PlannedDensity { get; init; }

    /// <summary>Density measured; null where the tone lies beside the sheet.</summary>
    public double? Density { get; init; }

    public double? DensitySd { get; init; }

    /// <summary>How much lighter than wanted, stops; of a burnt or blocked tone at least so much.</summary>
    public double? FromAimStops { get; init; }

    public double? FromAimSdStops { get; init; }

    public string? Outcome { get; init; }
}
