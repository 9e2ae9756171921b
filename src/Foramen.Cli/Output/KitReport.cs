namespace Foramen.Cli.Output;

/// <summary>What <c>foramen kit --json</c> says.</summary>
internal sealed record KitReport
{
    /// <summary>Sheets of paper, spares included.</summary>
    public required int Paper { get; init; }

    public required int Spares { get; init; }

    public required int People { get; init; }

    public required IReadOnlyList<KitLiquidReport> Liquids { get; init; }

    /// <summary>Fresh developer for topping up, part of the developer.</summary>
    public required double TopUpMl { get; init; }

    public required double ConcentratesMl { get; init; }

    public required double WaterMl { get; init; }

    /// <summary>What the waste containers must hold.</summary>
    public required double WasteMl { get; init; }

    /// <summary>Changes of wash water for each sheet.</summary>
    public required int WashChanges { get; init; }

    /// <summary>How long each change stands, s.</summary>
    public required double WashChangeSeconds { get; init; }

    /// <summary>Weight if all water is carried, without containers.</summary>
    public required double Kilograms { get; init; }

    /// <summary>In the user's money; null without prices.</summary>
    public double? Cost { get; init; }

    /// <summary>How long the one developer bottle is busy.</summary>
    public required double DeveloperBusySeconds { get; init; }

    /// <summary>Activity of the developer after the last sheet.</summary>
    public required SpreadReport ActivityAtEnd { get; init; }

    public required IReadOnlyList<string> Packing { get; init; }

    public required IReadOnlyList<string> Remarks { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
