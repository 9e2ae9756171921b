namespace Foramen.Journal.Bodies;

/// <summary>The processing run ended.</summary>
public sealed record BathFinished() : SheetBody(EntryKind.BathFinished)
{
    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
