namespace Foramen.Journal.Bodies;

/// <summary>What happens to one strip.</summary>
public abstract record StripBody : EntryBody
{
    private protected StripBody(string kind)
        : base(kind)
    {
    }

    /// <summary>The strip.</summary>
    public required Ulid Strip { get; init; }
}
