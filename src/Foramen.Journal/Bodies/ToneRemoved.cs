namespace Foramen.Journal.Bodies;

/// <summary>A tone was taken off the ladder.</summary>
public sealed record ToneRemoved() : SheetBody(EntryKind.ToneRemoved)
{
    /// <summary>The tone.</summary>
    public required Ulid Tone { get; init; }
}
