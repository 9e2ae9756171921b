using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>Used solution was poured away and fresh added, in this order; either may be nothing.</summary>
public sealed record BottleToppedUp() : BottleBody(EntryKind.BottleToppedUp)
{
    /// <summary>Poured into the waste container before, ml.</summary>
    [JsonPropertyName("pouredMl")]
    public required double PouredMillilitres { get; init; }

    /// <summary>Fresh solution added after that, ml.</summary>
    [JsonPropertyName("freshMl")]
    public required double FreshMillilitres { get; init; }

    /// <summary>Strength of what was added: 1 for working strength, 0 for water; 1 where missing.</summary>
    public double? Strength { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        base.Check();
        Guard.Within(PouredMillilitres, 0, BottleMixed.MaxMillilitres, "what was poured away", "ml");
        Guard.Within(FreshMillilitres, 0, BottleMixed.MaxMillilitres, "what was topped up", "ml");
        BodyCheck.Optional(Strength, 0, 1.5, "the strength of what was added");
    }
}
