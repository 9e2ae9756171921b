namespace Foramen.Journal.Bodies;

/// <summary>What an entry says of one bottle of developer or fixer.</summary>
public abstract record BottleBody : EntryBody
{
    /// <summary>A body of this kind.</summary>
    private protected BottleBody(string kind)
        : base(kind)
    {
    }

    /// <summary>The bottle. Emptied and mixed afresh it is another bottle.</summary>
    public required Ulid Bottle { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
