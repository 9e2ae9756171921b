namespace Foramen.Cli.Output;

/// <summary>What <c>foramen marks --json</c> says.</summary>
internal sealed record MarksReport
{
    public required string Camera { get; init; }

    /// <summary>From the front mark to the rear marks, mm.</summary>
    public required double BaseMm { get; init; }

    public required IReadOnlyList<MarkReport> Marks { get; init; }

    /// <summary>How far the aim may be off, one standard deviation, degrees.</summary>
    public required double ToleranceDeg { get; init; }

    /// <summary>The same as a part of the sheet's width and height, 0 to 1.</summary>
    public required double ToleranceOfWidth { get; init; }

    public required double ToleranceOfHeight { get; init; }

    public required string Caution { get; init; }

    /// <summary>Files written.</summary>
    public required IReadOnlyList<string> Files { get; init; }
}
