namespace Foramen.Cli.Output;

/// <summary>What <c>foramen rehearse --json</c> says.</summary>
internal sealed record RehearsalReport
{
    public required long Seed { get; init; }

    public required int Worlds { get; init; }

    public required int Sheets { get; init; }

    /// <summary><c>usual</c>, <c>heldOut</c> or <c>outside</c>.</summary>
    public required string Family { get; init; }

    public required IReadOnlyList<PolicyReport> Policies { get; init; }

    /// <summary>Part of the way from the rule of thumb to the oracle that Foramen came, over sheets 6 on; null unless all three were played.</summary>
    public double? GapClosed { get; init; }

    /// <summary>The same of the insider, who knows how worlds are made; null unless played with them.</summary>
    public double? InsiderGapClosed { get; init; }
}
