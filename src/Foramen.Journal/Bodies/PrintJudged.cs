namespace Foramen.Journal.Bodies;

/// <summary>The print was judged; the last judgement counts.</summary>
public sealed record PrintJudged() : SheetBody(EntryKind.PrintJudged)
{
    /// <summary>Worth keeping.</summary>
    public required bool Keeper { get; init; }

    /// <summary>Tone by tone.</summary>
    public IReadOnlyList<JudgedTone>? Tones { get; init; }

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<MishapCause>? Causes { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Count(Tones, 1000, "judged tones");
        foreach (var tone in Tones ?? [])
        {
            tone.Check();
        }

        BodyCheck.Count(Causes, 100, "causes");
        BodyCheck.Note(Note);
    }
}
