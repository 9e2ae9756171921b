namespace Foramen.Journal.Bodies;

/// <summary>What a moving region shows began to move.</summary>
public sealed record MotionStarted() : SheetBody(EntryKind.MotionStarted)
{
    /// <summary>The moving region.</summary>
    public required Ulid Motion { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check() => BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
}
