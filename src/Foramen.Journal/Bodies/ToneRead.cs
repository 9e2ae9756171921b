using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A tone was read. The same tone read again replaces its reading.</summary>
public sealed record ToneRead() : SheetBody(EntryKind.ToneRead)
{
    /// <summary>The tone.</summary>
    public required Ulid Tone { get; init; }

    /// <summary>What it is, in the photographer's words.</summary>
    public required string Name { get; init; }

    /// <summary>Its luminance, cd/m².</summary>
    [JsonPropertyName("luminanceCdM2")]
    public required double LuminanceCandelasPerSquareMetre { get; init; }

    /// <summary>How it is wanted.</summary>
    public required WantedRendering Rendering { get; init; }

    /// <summary>Standard deviation of the reading, stops.</summary>
    public double? SdStops { get; init; }

    /// <summary>Whether the luminance is exact or only a bound; exact where missing.</summary>
    public ReadingLimit? Limit { get; init; }

    /// <summary>Its worth to the paper against a neutral tone of the same luminance; 1 where missing.</summary>
    public double? ActinicRatio { get; init; }

    /// <summary>Colour temperature of the light on it, K.</summary>
    public double? LightKelvin { get; init; }

    /// <summary>Where the luminance came from.</summary>
    public ReadingSource? Source { get; init; }

    /// <summary>What was typed or shown, as text: <c>EV 12.3</c>.</summary>
    public string? AsRead { get; init; }

    /// <summary>Where on the photograph as it is looked at: 0 left, 1 right.</summary>
    public double? PhotographX { get; init; }

    /// <summary>Where on the photograph as it is looked at: 0 top, 1 bottom.</summary>
    public double? PhotographY { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Required(Name, "the tone's name");
        Guard.Within(LuminanceCandelasPerSquareMetre, 1e-6, 1e10, "the luminance", "cd/m²");
        BodyCheck.Optional(SdStops, 0, 10, "the reading's spread", "stops");
        BodyCheck.Optional(ActinicRatio, 0.001, 1000, "the actinic ratio");
        BodyCheck.Optional(LightKelvin, 1000, 100_000, "the colour temperature", "K");
        BodyCheck.Name(AsRead, "the reading");
        BodyCheck.Optional(PhotographX, 0, 1, "the place on the photograph");
        BodyCheck.Optional(PhotographY, 0, 1, "the place on the photograph");
    }
}
