namespace Foramen.Rehearsal.Lines;

/// <summary>Photographer to world: what is done to the sheet.</summary>
public sealed record ExposeLine : RehearsalLine
{
    /// <summary>Time the hole is open, 0.01 to 21 600 s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Time of the flash at the white card, s.</summary>
    public double FlashSeconds { get; init; }

    /// <summary>Probability of a keeper in the photographer's own view, 0 to 1; null for one who gives none.</summary>
    public double? Odds { get; init; }
}
