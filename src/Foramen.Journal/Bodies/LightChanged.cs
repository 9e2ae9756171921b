using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>The light changed while the hole was open.</summary>
public sealed record LightChanged() : SheetBody(EntryKind.LightChanged)
{
    /// <summary>Light against the metered light, stops: −2 is a quarter of it.</summary>
    public required double LightStops { get; init; }

    /// <summary>The light in one word.</summary>
    public required LightWord Light { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(LightStops, -20, 20, "the change of light", "stops");
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
