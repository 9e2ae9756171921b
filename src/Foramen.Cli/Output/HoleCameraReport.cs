namespace Foramen.Cli.Output;

/// <summary>What a measured hole does in a camera.</summary>
internal sealed record HoleCameraReport
{
    public required string Name { get; init; }

    /// <summary>More light than through the hole in the camera's description, stops.</summary>
    public required double LightStops { get; init; }

    public required double LightSdStops { get; init; }

    public required double FNumber { get; init; }

    /// <summary>The best hole for this distance, mm.</summary>
    public required double BestDiameterMm { get; init; }

    /// <summary>Line pairs per mm that keep a tenth of their contrast.</summary>
    public required double LinePairsPerMmAtTenth { get; init; }

    /// <summary>The same through the best hole.</summary>
    public required double LinePairsPerMmAtTenthBest { get; init; }
}
