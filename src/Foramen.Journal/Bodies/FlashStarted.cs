using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>The flash began.</summary>
public sealed record FlashStarted() : SheetBody(EntryKind.FlashStarted)
{
    /// <summary>Flash time planned, s.</summary>
    public required double PlannedSeconds { get; init; }

    /// <summary>What to point at.</summary>
    public string? PointedAt { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(PlannedSeconds, 0, BodyCheck.DaySeconds, "the flash time", "s");
        BodyCheck.Name(PointedAt, "what the flash was pointed at");
    }
}
