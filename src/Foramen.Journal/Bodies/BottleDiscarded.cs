namespace Foramen.Journal.Bodies;

/// <summary>A bottle was given up: what is in it is waste.</summary>
public sealed record BottleDiscarded() : BottleBody(EntryKind.BottleDiscarded)
{
    /// <summary>Why, and where it went.</summary>
    public string? Why { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        base.Check();
        BodyCheck.Note(Why);
    }
}
