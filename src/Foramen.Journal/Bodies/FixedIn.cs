namespace Foramen.Journal.Bodies;

/// <summary>A sheet was fixed in a bottle. Said again of the same sheet, the last counts, wherever the bottle.</summary>
public sealed record FixedIn() : SheetBody(EntryKind.SheetFixed)
{
    /// <summary>The bottle.</summary>
    public required Ulid Bottle { get; init; }

    /// <summary>Temperature of the fixer, °C.</summary>
    public double? TemperatureCelsius { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(TemperatureCelsius, 0, 60, "the temperature", "°C");
    }
}
