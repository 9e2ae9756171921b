using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A test strip was made. Said again of the same strip, the last counts.</summary>
public sealed record StripMade() : StripBody(EntryKind.StripMade)
{
    internal const int MostPatches = 100;

    /// <summary>The box of paper.</summary>
    public required Ulid Paper { get; init; }

    /// <summary>What for.</summary>
    public required StripPurpose Purpose { get; init; }

    /// <summary>Light on the strip as a meter would count it, lx.</summary>
    [JsonPropertyName("onStripLux")]
    public required double OnStripLux { get; init; }

    /// <summary>Its colour temperature, K.</summary>
    public required double LightKelvin { get; init; }

    /// <summary>Standard deviation of that light, stops; 0.25 where missing.</summary>
    public double? LightSdStops { get; init; }

    /// <summary>All the light of each patch, counted as time, rising, s.</summary>
    public required IReadOnlyList<double> Seconds { get; init; }

    /// <summary>Whether the light was interrupted for every move of the card, so that errors of timing add up.</summary>
    public bool? InSeveralOpenings { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(OnStripLux, 1e-6, 1e6, "the light on the strip", "lx");
        Guard.Within(LightKelvin, 1000, 100_000, "the colour temperature", "K");
        BodyCheck.Optional(LightSdStops, 0, 3, "the spread of the light on the strip", "stops");
        Guard.Within(Seconds.Count, 2, MostPatches, "the number of patches");
        for (var i = 0; i < Seconds.Count; i++)
        {
            Guard.Within(Seconds[i], 0.01, BodyCheck.DaySeconds, $"the time of patch {i + 1}", "s");
            if (i > 0 && Seconds[i] <= Seconds[i - 1])
            {
                throw new RefusalException($"Patch {i + 1} got no more light than patch {i}; list the patches from least to most light.");
            }
        }

        BodyCheck.Note(Note);
    }
}
