using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>Time and flash were decided; the last plan counts.</summary>
public sealed record PlanMade() : SheetBody(EntryKind.PlanMade)
{
    /// <summary>Exposure time at the metered light, failure included, s.</summary>
    public required double ExposureSeconds { get; init; }

    /// <summary>Flash time, s; zero for none.</summary>
    public double FlashSeconds { get; init; }

    /// <summary>Flash exposure over the exposure of the first visible tone.</summary>
    public double? FlashFraction { get; init; }

    /// <summary>Luminance of the surface the flash is pointed at, cd/m².</summary>
    [JsonPropertyName("flashLuminanceCdM2")]
    public double? FlashLuminanceCandelasPerSquareMetre { get; init; }

    /// <summary>Odds of a keeper, 0 to 1.</summary>
    public double? Odds { get; init; }

    /// <summary>What limits the odds, in the plan's words.</summary>
    public string? LimitedBy { get; init; }

    /// <summary>Colour temperature of the metered light, K.</summary>
    public double? LightKelvin { get; init; }

    /// <summary>What becomes of each tone.</summary>
    public IReadOnlyList<PlannedTone>? Tones { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(ExposureSeconds, 0.01, BodyCheck.DaySeconds, "the exposure time", "s");
        Guard.Within(FlashSeconds, 0, BodyCheck.DaySeconds, "the flash time", "s");
        BodyCheck.Optional(FlashFraction, 0, 100, "the flash fraction");
        BodyCheck.Optional(FlashLuminanceCandelasPerSquareMetre, 0, 1e10, "the flash's luminance", "cd/m²");
        BodyCheck.Optional(Odds, 0, 1, "the odds");
        BodyCheck.Name(LimitedBy, "what limits the odds");
        BodyCheck.Optional(LightKelvin, 1000, 100_000, "the colour temperature", "K");
        BodyCheck.Count(Tones, 1000, "planned tones");
        foreach (var tone in Tones ?? [])
        {
            tone.Check();
        }

        BodyCheck.Note(Note);
    }
}
