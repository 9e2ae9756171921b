using System.Text.Json.Serialization;

namespace Foramen.Journal.Kit;

/// <summary>
/// A camera as it is written down: the description in a <c>camera.defined</c> entry and a camera file for the prompt. Units are in the names; what
/// a value means is said in the Engine's room Camera, which also checks its range.
/// </summary>
public sealed record CameraDefinition
{
    /// <summary>What its owner calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Diameter of the hole, mm.</summary>
    [JsonPropertyName("holeDiameterMm")]
    public required double HoleDiameterMillimetres { get; init; }

    /// <summary>Relative standard deviation of the diameter; 0.05 where nobody has measured it.</summary>
    public double? HoleDiameterRelativeSd { get; init; }

    /// <summary>Thickness of the hole's edge, mm.</summary>
    [JsonPropertyName("holeThicknessMm")]
    public double? HoleThicknessMillimetres { get; init; }

    /// <summary>Distance from the hole to the paper along the axis, mm.</summary>
    [JsonPropertyName("focalDistanceMm")]
    public required double FocalDistanceMillimetres { get; init; }

    /// <summary>Relative standard deviation of that distance; none where missing.</summary>
    public double? FocalDistanceRelativeSd { get; init; }

    /// <summary>Width of the sheet as it lies in the camera (level), mm; along the curve for curved paper.</summary>
    [JsonPropertyName("sheetWidthMm")]
    public required double SheetWidthMillimetres { get; init; }

    /// <summary>Height of the sheet as it lies in the camera, mm.</summary>
    [JsonPropertyName("sheetHeightMm")]
    public required double SheetHeightMillimetres { get; init; }

    /// <summary><c>flat</c> or <c>curved</c>; flat where missing.</summary>
    public string? PaperShape { get; init; }

    /// <summary>Radius of the wall that curved paper lies on, mm.</summary>
    [JsonPropertyName("wallRadiusMm")]
    public double? WallRadiusMillimetres { get; init; }

    /// <summary>Shift of the hole to the right of the sheet's middle, as the finished picture is looked at, mm.</summary>
    [JsonPropertyName("holeOffsetXMm")]
    public double? HoleOffsetXMillimetres { get; init; }

    /// <summary>Shift of the hole above the sheet's middle, as the finished picture is looked at, mm.</summary>
    [JsonPropertyName("holeOffsetYMm")]
    public double? HoleOffsetYMillimetres { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }
}
