namespace Foramen.Journal.Bodies;

/// <summary>A moving region was unmarked.</summary>
public sealed record MotionRemoved() : SheetBody(EntryKind.MotionRemoved)
{
    /// <summary>The moving region.</summary>
    public required Ulid Motion { get; init; }
}
