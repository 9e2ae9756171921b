using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A sheet was developed in a bottle. Said again of the same sheet, the last counts, wherever the bottle.</summary>
public sealed record DevelopedIn() : SheetBody(EntryKind.SheetDeveloped)
{
    /// <summary>The bottle.</summary>
    public required Ulid Bottle { get; init; }

    /// <summary>Temperature of the developer, °C.</summary>
    public required double TemperatureCelsius { get; init; }

    /// <summary>How long it was developed, s.</summary>
    public double? DevelopedSeconds { get; init; }

    /// <summary>From the pour to the first visible tone, s; missing where nothing could be seen.</summary>
    public double? AppearedAfterSeconds { get; init; }

    /// <summary>Lost at the transfer, ml; 1.5 where missing (common practice: a millilitre or two).</summary>
    [JsonPropertyName("lostMl")]
    public double? LostMillilitres { get; init; }

    /// <summary>Mean density above the paper's white; from judgement or plan where missing.</summary>
    public double? MeanDensity { get; init; }

    /// <summary>Colour of the developer afterwards.</summary>
    public DeveloperColour? Colour { get; init; }

    /// <summary>How long before the entry it happened, s; zero where missing. For what is written down afterwards.</summary>
    public double? SecondsAgo { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(TemperatureCelsius, 0, 60, "the temperature", "°C");
        BodyCheck.Optional(DevelopedSeconds, 0, BodyCheck.DaySeconds, "the development time", "s");
        BodyCheck.Optional(AppearedAfterSeconds, 0.5, 600, "the time of appearance", "s");
        BodyCheck.Optional(LostMillilitres, 0, BottleMixed.MaxMillilitres, "what was lost at the transfer", "ml");
        BodyCheck.Optional(MeanDensity, 0, 4, "the mean density");
        BodyCheck.Optional(SecondsAgo, 0, BodyCheck.DaySeconds, "how long ago it was", "s");
    }
}
