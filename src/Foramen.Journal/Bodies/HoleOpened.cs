namespace Foramen.Journal.Bodies;

/// <summary>The hole was opened.</summary>
public sealed record HoleOpened() : SheetBody(EntryKind.HoleOpened)
{
    /// <summary>Light against the metered light, stops; zero where missing.</summary>
    public double? LightStops { get; init; }

    /// <summary>The light in one word.</summary>
    public LightWord? Light { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(LightStops, -20, 20, "the change of light", "stops");
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
