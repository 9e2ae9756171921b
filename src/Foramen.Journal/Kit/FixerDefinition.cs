using System.Text.Json.Serialization;

namespace Foramen.Journal.Kit;

/// <summary>How far a fixer may be used, as written down in <c>bottle.mixed</c>.</summary>
public sealed record FixerDefinition
{
    /// <summary><c>ammoniumStrong</c>, <c>ammoniumPaper</c> or <c>sodium</c>; ammoniumPaper where missing.</summary>
    public string? Kind { get; init; }

    /// <summary>Silver it may hold, g/l; 2 where missing.</summary>
    public double? SilverLimitGramsPerLitre { get; init; }

    /// <summary>Area of paper it may take, m²/l; 2.73 where missing.</summary>
    [JsonPropertyName("areaLimitM2PerLitre")]
    public double? AreaLimitSquareMetresPerLitre { get; init; }
}
