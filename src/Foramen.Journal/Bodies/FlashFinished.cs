namespace Foramen.Journal.Bodies;

/// <summary>The flash ended.</summary>
public sealed record FlashFinished() : SheetBody(EntryKind.FlashFinished)
{
    /// <summary>Time given, s, where it differs from the time between the two entries.</summary>
    public double? GivenSeconds { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(GivenSeconds, 0, BodyCheck.DaySeconds, "the flash time", "s");
    }
}
