using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>One entry of the record that teaches: a judged or measured sheet, or a strip. Pieces of evidence are independent of one another given what is believed.</summary>
public sealed record Evidence
{
    /// <summary>Scatter from sheet to sheet in steady light, from light, bath and timing together (an assumption).</summary>
    public static Stops UsualScatter { get; } = Stops.FromValue(0.30);

    /// <summary>The entry it comes from. The same id counts once; of several, the last one given.</summary>
    public required string Id { get; init; }

    /// <summary>Where it comes from.</summary>
    public required EvidenceKind Kind { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Box of paper.</summary>
    public required string Box { get; init; }

    /// <summary>Camera; null where none was used.</summary>
    public string? Camera { get; init; }

    /// <summary>Kind of sky; null where the light did not come from one.</summary>
    public string? Sky { get; init; }

    /// <summary>Whether the exposure was found by the user's meter.</summary>
    public bool Metered { get; init; } = true;

    /// <summary>How well the label states the box's speed; null for the usual.</summary>
    public Stops? LabelSpread { get; init; }

    /// <summary>How well it states the box's failure, stops for each doubling; null for the usual.</summary>
    public Stops? FailureSpread { get; init; }

    /// <summary>Doublings from the time that the label's speed was found at to the time given; negative for a shorter one.</summary>
    public double Doublings { get; init; }

    /// <summary>Sheets that had gone through the developer before.</summary>
    public double SheetsInBottle { get; init; }

    /// <summary>Scatter of such a sheet as a whole, before the user's own is known: more under broken cloud.</summary>
    public Stops Scatter { get; init; } = UsualScatter;

    /// <summary>Whether the sheet was kept for its tones; null where it was not said, or something else spoilt it.</summary>
    public bool? Kept { get; init; }

    /// <summary>Its tones.</summary>
    public required IReadOnlyList<ToneEvidence> Tones { get; init; }

    /// <summary>Refuses what cannot be.</summary>
    /// <exception cref="RefusalException">A number is out of its range.</exception>
    public void Check()
    {
        Guard.Within(Doublings, -30, 30, "the doublings of time", "");
        Guard.Within(SheetsInBottle, 0, 10_000, "the sheets in the bottle", "");
        Guard.Within(LabelSpread?.Value ?? 0, 0, 5, "the spread of the label's speed", "stops");
        Guard.Within(FailureSpread?.Value ?? 0, 0, 1, "the spread of the label's failure", "stops a doubling");
        Guard.Within(Scatter.Value, 0.01, 5, "the scatter of a sheet", "stops");
        foreach (var tone in Tones)
        {
            Guard.Within(tone.Foretold.Value, -40, 40, "what was foretold of a tone", "stops");
            Guard.Within(tone.Seen.Value, -40, 40, "what was seen of a tone", "stops");
            Guard.Within(tone.Spread.Value, 0.01, 5, "the spread of a judgement", "stops");
            Guard.Within(tone.FlashShare, 0, 1, "the flash's part of a tone");
        }
    }
}
