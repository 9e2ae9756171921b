namespace Foramen.Journal.Bodies;

/// <summary>A sheet began its life. Said again of the same sheet, the last counts.</summary>
public sealed record SheetStarted() : SheetBody(EntryKind.SheetStarted)
{
    /// <summary>The outing it belongs to.</summary>
    public Ulid? Outing { get; init; }

    /// <summary>The camera it is in.</summary>
    public Ulid? Camera { get; init; }

    /// <summary>The box it was taken from.</summary>
    public Ulid? Paper { get; init; }

    /// <summary>Where, if not where the outing is.</summary>
    public Ulid? Place { get; init; }

    /// <summary>What it is to show, in the photographer's words.</summary>
    public string? Name { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Name(Name, "the sheet's name");
        BodyCheck.Note(Note);
    }
}
