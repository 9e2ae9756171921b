using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>A bottle of working solution was mixed and stands closed. Said again of the same bottle, the last counts.</summary>
public sealed record BottleMixed() : BottleBody(EntryKind.BottleMixed)
{
    internal const double MaxMillilitres = 100_000;

    /// <summary>What it holds.</summary>
    public required BottleContents Contents { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Working solution in it, ml.</summary>
    [JsonPropertyName("volumeMl")]
    public required double VolumeMillilitres { get; init; }

    /// <summary>What it holds when full, ml; <see cref="VolumeMillilitres"/> where missing.</summary>
    [JsonPropertyName("capacityMl")]
    public double? CapacityMillilitres { get; init; }

    /// <summary>What it takes to cover a sheet in the tank that is used, ml; 150 where missing.</summary>
    [JsonPropertyName("coveringMl")]
    public double? CoveringMillilitres { get; init; }

    /// <summary>Parts of water to one of concentrate; zero is ready to use.</summary>
    public double? WaterParts { get; init; }

    /// <summary>Its temperature, °C.</summary>
    public double? TemperatureCelsius { get; init; }

    /// <summary>What is believed of a developer; common practice where missing.</summary>
    public DeveloperDefinition? Developer { get; init; }

    /// <summary>How far a fixer may be used; common practice where missing.</summary>
    public FixerDefinition? Fixer { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        base.Check();
        BodyCheck.Required(Name, "the bottle's name");
        Guard.Within(VolumeMillilitres, 10, MaxMillilitres, "what is in the bottle", "ml");
        BodyCheck.Optional(CapacityMillilitres, 10, MaxMillilitres, "what the bottle holds when full", "ml");
        BodyCheck.Optional(CoveringMillilitres, 0, MaxMillilitres, "what covers a sheet", "ml");
        BodyCheck.Optional(WaterParts, 0, 1000, "the parts of water");
        BodyCheck.Optional(TemperatureCelsius, 0, 60, "the temperature", "°C");
        if (Developer is { } developer)
        {
            KitCheck.Developer(developer);
        }

        if (Fixer is { } fixer)
        {
            KitCheck.Fixer(fixer);
        }

        BodyCheck.Note(Note);
    }
}
