namespace Foramen.Cli.Output;

/// <summary>What to do before the next sheet.</summary>
internal sealed record BathAdviceReport
{
    /// <summary>"use", "extend", "topUp" or "replace".</summary>
    public required string Action { get; init; }

    public required string Reason { get; init; }

    /// <summary>To waste first; null unless topping up.</summary>
    public double? PourMl { get; init; }

    /// <summary>Fresh after that; null unless topping up.</summary>
    public double? FreshMl { get; init; }

    /// <summary>How it is topped up: "none", "onlyLoss" or "refresh".</summary>
    public required string Way { get; init; }

    public required string LeadsTo { get; init; }
}
