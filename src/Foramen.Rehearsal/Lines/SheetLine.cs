namespace Foramen.Rehearsal.Lines;

/// <summary>World to photographer: the next sheet, with all that can be seen before it.</summary>
public sealed record SheetLine : RehearsalLine
{
    /// <summary>Which sheet, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The sky in words: noon, broken cloud, overcast, open shade, low sun, or any other.</summary>
    public required string Sky { get; init; }

    /// <summary>f-number of the hole.</summary>
    public required double FNumber { get; init; }

    /// <summary>The label of the box.</summary>
    public required LabelSeen Label { get; init; }

    /// <summary>The tones and their readings.</summary>
    public required IReadOnlyList<ToneSeen> Tones { get; init; }

    /// <summary>Reading of the white card that a flash is given at, EV at ISO 100; null where there is none.</summary>
    public double? CardEv { get; init; }

    /// <summary>Sheets that have gone through the developer.</summary>
    public int SheetsInBottle { get; init; }

    /// <summary>What one who knows the world would do; for the oracle alone, never passed to a photographer.</summary>
    public ExposeLine? Oracle { get; init; }
}
