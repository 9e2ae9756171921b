namespace Foramen.Cli.Output;

/// <summary>What is predicted for one tone.</summary>
internal sealed record ToneReport
{
    public required string Name { get; init; }

    public required string Rendering { get; init; }

    public required double LuminanceCdPerM2 { get; init; }

    /// <summary><c>exact</c>, <c>atLeast</c> or <c>atMost</c>.</summary>
    public required string Reading { get; init; }

    /// <summary>What the tone's own colour is worth to the paper against a neutral of the same luminance, stops.</summary>
    public required double ColourStops { get; init; }

    /// <summary>Light lost at its place on the sheet, stops (negative).</summary>
    public required double FalloffStops { get; init; }

    public required double Density { get; init; }

    public required double DensitySd { get; init; }

    public required string Outcome { get; init; }

    /// <summary>Exposure against the one aimed at, stops; absent for a tone that may burn or block.</summary>
    public double? FromAimStops { get; init; }

    public required double ChanceAsWanted { get; init; }

    /// <summary>Whether the tone lies on the sheet; readings by hand count as the middle.</summary>
    public required bool OnSheet { get; init; }
}
