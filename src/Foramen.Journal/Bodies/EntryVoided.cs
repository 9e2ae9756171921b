namespace Foramen.Journal.Bodies;

/// <summary>An entry is void: it stays in the journal and has no effect. A voiding cannot itself be voided or amended; what was voided by mistake is said again.</summary>
public sealed record EntryVoided() : EntryBody(EntryKind.EntryVoided)
{
    /// <summary>The entry that is void.</summary>
    public required Ulid Entry { get; init; }

    /// <summary>Why.</summary>
    public string? Why { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Note(Why);
    }
}
