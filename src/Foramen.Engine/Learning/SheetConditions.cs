using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>Under what conditions a sheet is about to be made: which beliefs bear on it.</summary>
public sealed record SheetConditions
{
    /// <summary>Box of paper.</summary>
    public required string Box { get; init; }

    /// <summary>Camera.</summary>
    public string? Camera { get; init; }

    /// <summary>Kind of sky.</summary>
    public string? Sky { get; init; }

    /// <summary>Whether the user's meter is used.</summary>
    public bool Metered { get; init; } = true;

    /// <summary>Sheets that have gone through the developer.</summary>
    public double SheetsInBottle { get; init; }

    /// <summary>How well the label, or a strip, states the box's speed; null for the usual.</summary>
    public Stops? LabelSpread { get; init; }

    /// <summary>How well it states the box's failure, stops for each doubling; null for the usual.</summary>
    public Stops? FailureSpread { get; init; }

    /// <summary>What is said of a belief's spread before any evidence; null for the usual.</summary>
    internal Stops? Said(BeliefKind kind) => kind switch
    {
        BeliefKind.Speed => LabelSpread,
        BeliefKind.Failure => FailureSpread,
        _ => null,
    };
}
