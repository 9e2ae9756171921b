using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A camera's focal distance was measured on a print of two marks. The camera's next version has this distance and this spread.</summary>
public sealed record ChamberMeasured() : EntryBody(EntryKind.ChamberMeasured)
{
    /// <summary>The camera.</summary>
    public required Ulid Camera { get; init; }

    /// <summary>From the hole to the paper along the axis, mm.</summary>
    [JsonPropertyName("focalDistanceMm")]
    public required double FocalDistanceMillimetres { get; init; }

    /// <summary>Its standard deviation, mm.</summary>
    [JsonPropertyName("focalDistanceSdMm")]
    public required double FocalDistanceSdMillimetres { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(FocalDistanceMillimetres, 0.1, 10_000, "the focal distance", "mm");
        Guard.Within(FocalDistanceSdMillimetres, 0, 10_000, "the spread of the focal distance", "mm");
    }
}
