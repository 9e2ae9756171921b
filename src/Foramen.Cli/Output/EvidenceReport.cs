namespace Foramen.Cli.Output;

/// <summary>One sheet as evidence, and how far it moved what is expected of the next one like it.</summary>
internal sealed record EvidenceReport
{
    /// <summary>The entry that judged it.</summary>
    public required string Entry { get; init; }

    public required string Sheet { get; init; }

    public required string Box { get; init; }

    public string? Sky { get; init; }

    /// <summary>How much lighter than wanted label and description foretold it, mean of its tones, stops.</summary>
    public required double ForetoldStops { get; init; }

    /// <summary>How much lighter it came out, mean of its tones, stops.</summary>
    public required double SeenStops { get; init; }

    /// <summary>By how much it moved what is expected of the next such sheet, stops.</summary>
    public required double MovedStops { get; init; }

    /// <summary>How far it was believed, 0 to 1.</summary>
    public required double Weight { get; init; }
}
