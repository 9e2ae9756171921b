namespace Foramen.Cli.Output;

/// <summary>What <c>foramen bath --json</c> says.</summary>
internal sealed record BathReport
{
    public required string Bottle { get; init; }

    public required string Name { get; init; }

    public required string At { get; init; }

    public required double TemperatureCelsius { get; init; }

    /// <summary>"said", "read" or "assumed".</summary>
    public required string TemperatureFrom { get; init; }

    /// <summary>1 for fresh developer.</summary>
    public required SpreadReport Activity { get; init; }

    /// <summary>For the next sheet at this temperature; null where no time makes up for the weakness or too little is left to cover a sheet.</summary>
    public SpreadReport? DevelopSeconds { get; init; }

    /// <summary>When the first tone should appear; null with <see cref="DevelopSeconds"/>.</summary>
    public double? FirstToneSeconds { get; init; }

    /// <summary>Shortest time for full black; null with <see cref="DevelopSeconds"/>.</summary>
    public double? ShortestSeconds { get; init; }

    public required BathSheetsLeftReport SheetsLeft { get; init; }

    public required BathAdviceReport Advice { get; init; }

    public required BathVolumeReport Volume { get; init; }

    public required int SheetsDeveloped { get; init; }

    public required double SquareMetresDeveloped { get; init; }

    public required double ByProductsM2PerLitre { get; init; }

    public required double AgeHours { get; init; }

    public required bool Open { get; init; }

    public string? Colour { get; init; }

    /// <summary>Where it settles if sheets and topping up go on as they did; null where nothing is topped up.</summary>
    public BathSteadyReport? Steady { get; init; }

    /// <summary>What first tones say of the developer.</summary>
    public required BathDeveloperReport Developer { get; init; }

    public required IReadOnlyList<BathSheetReport> Sheets { get; init; }

    public required IReadOnlyList<BathFixerReport> Fixers { get; init; }

    public required IReadOnlyList<string> Warnings { get; init; }

    public required IReadOnlyList<string> Remarks { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
