namespace Foramen.Cli.Output;

/// <summary>What <c>foramen strip flash --json</c> says.</summary>
internal sealed record StripFlashReport
{
    /// <summary>The flash that first shows, in the strip's light.</summary>
    public required double ThresholdSeconds { get; init; }

    public required double ThresholdSdStops { get; init; }

    /// <summary>Threshold by the strip over threshold by the paper's curve, stops.</summary>
    public required double AgainstCurveStops { get; init; }

    /// <summary>The flash to give, over the threshold.</summary>
    public required double AdvisedFraction { get; init; }

    /// <summary>How long it is in the light it was asked for.</summary>
    public required double AdvisedSeconds { get; init; }

    public required IReadOnlyList<StripFlashTradeReport> Trade { get; init; }
}
