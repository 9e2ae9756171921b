namespace Foramen.Journal.Bodies;

/// <summary>A processing run began.</summary>
public sealed record BathStarted() : SheetBody(EntryKind.BathStarted)
{
    /// <summary>Temperature of the developer, °C.</summary>
    public double? TemperatureCelsius { get; init; }

    /// <summary>The bottle of developer it goes into.</summary>
    public Ulid? Bottle { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(TemperatureCelsius, 0, 60, "the temperature", "°C");
        BodyCheck.Note(Note);
    }
}
