using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A step of the processing run began; the one before it ended.</summary>
public sealed record BathStep() : SheetBody(EntryKind.BathStep)
{
    /// <summary>Which.</summary>
    public required BathKind Step { get; init; }

    /// <summary>How long it is to take, s.</summary>
    public required double PlannedSeconds { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(PlannedSeconds, 0, BodyCheck.DaySeconds, "the time of the bath", "s");
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
