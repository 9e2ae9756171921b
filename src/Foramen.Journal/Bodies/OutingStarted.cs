namespace Foramen.Journal.Bodies;

/// <summary>A day out began.</summary>
public sealed record OutingStarted() : EntryBody(EntryKind.OutingStarted)
{
    /// <summary>The outing.</summary>
    public required Ulid Outing { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Where.</summary>
    public Ulid? Place { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Required(Name, "the outing's name");
        BodyCheck.Note(Note);
    }
}
