namespace Foramen.Cli.Output;

/// <summary>What <c>foramen outing --json</c> says. Instants are by the clocks of the zone, with their offset.</summary>
internal sealed record OutingReport
{
    public required string Date { get; init; }

    public required string Zone { get; init; }

    /// <summary>First instant looked at.</summary>
    public required string From { get; init; }

    /// <summary>Last instant looked at.</summary>
    public required string To { get; init; }

    public required string Sky { get; init; }

    public required IReadOnlyList<OutingPlaceReport> Places { get; init; }

    /// <summary>What lamps light; null where nothing was said of any.</summary>
    public OutingLamplitReport? Lamplit { get; init; }

    public required IReadOnlyList<OutingStepReport> Schedule { get; init; }

    /// <summary>Places whose light does not fit.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    public required int Sheets { get; init; }

    /// <summary>Sheets that get sun, on average.</summary>
    public required double SheetsHopedFor { get; init; }

    public required IReadOnlyList<string> Packing { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
