namespace Foramen.Cli.Output;

/// <summary>What <c>foramen expose --json</c> says, and the plan part of <c>foramen preview --json</c>.</summary>
internal sealed record ExposeReport
{
    /// <summary>Time the hole is open, s, failure included.</summary>
    public required double ExposureSeconds { get; init; }

    /// <summary>Time of the flash before it, s; 0 for none.</summary>
    public required double FlashSeconds { get; init; }

    /// <summary>Flash exposure over that of the first visible tone.</summary>
    public required double FlashFraction { get; init; }

    /// <summary>What the flash gains in faint tones that can be seen, stops.</summary>
    public required double FlashGainStops { get; init; }

    /// <summary>Probability of a keeper, 0 to 1.</summary>
    public required double Odds { get; init; }

    /// <summary>What limits the odds most.</summary>
    public required string LimitedBy { get; init; }

    public required IReadOnlyList<LimitReport> Limits { get; init; }

    /// <summary>Spread of a mid-tone's exposure from all sources, stops (1 sd).</summary>
    public required double SpreadStops { get; init; }

    public required IReadOnlyList<ToneReport> Tones { get; init; }

    public BracketReport? Bracket { get; init; }

    public required string Camera { get; init; }

    public required double FNumber { get; init; }

    public required string Paper { get; init; }

    public required string Light { get; init; }

    public required double LightKelvin { get; init; }

    public required IReadOnlyList<string> Assumptions { get; init; }
}
