namespace Foramen.Journal.Bodies;

/// <summary>What an entry says of one sheet.</summary>
public abstract record SheetBody : EntryBody
{
    /// <summary>A body of this kind.</summary>
    private protected SheetBody(string kind)
        : base(kind)
    {
    }

    /// <summary>The sheet.</summary>
    public required Ulid Sheet { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
    }
}
