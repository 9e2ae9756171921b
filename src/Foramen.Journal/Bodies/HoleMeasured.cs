using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A camera's hole was measured on a scan. The camera's next version has this diameter and this spread; earlier sheets keep the version they were made with.</summary>
public sealed record HoleMeasured() : EntryBody(EntryKind.HoleMeasured)
{
    /// <summary>The camera.</summary>
    public required Ulid Camera { get; init; }

    /// <summary>Diameter of the circle with the hole's area, mm.</summary>
    [JsonPropertyName("diameterMm")]
    public required double DiameterMillimetres { get; init; }

    /// <summary>Its standard deviation, mm.</summary>
    [JsonPropertyName("diameterSdMm")]
    public required double DiameterSdMillimetres { get; init; }

    /// <summary>Least width over largest.</summary>
    public double? Roundness { get; init; }

    /// <summary>How far a burr reaches into the hole, mm.</summary>
    [JsonPropertyName("burrMm")]
    public double? BurrMillimetres { get; init; }

    /// <summary>The scan's resolution, pixels to the inch.</summary>
    public double? DotsPerInch { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(DiameterMillimetres, 0.001, 100, "the hole's diameter", "mm");
        Guard.Within(DiameterSdMillimetres, 0, 100, "the spread of the hole's diameter", "mm");
        BodyCheck.Optional(Roundness, 0, 1, "the hole's roundness");
        BodyCheck.Optional(BurrMillimetres, 0, 100, "the burr", "mm");
        BodyCheck.Optional(DotsPerInch, 10, 1e6, "the scan's resolution", "dpi");
    }
}
