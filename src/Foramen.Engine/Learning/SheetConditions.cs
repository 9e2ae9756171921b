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
}
