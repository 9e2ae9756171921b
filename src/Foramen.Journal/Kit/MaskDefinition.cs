using System.Text.Json.Serialization;

namespace Foramen.Journal.Kit;

/// <summary>
/// A mask as it is written down: what it should leave on the finished print, as that is looked at, and where it lies in the light. In a <c>mask.defined</c> entry and in a
/// mask file for the prompt. Units are in the names; the Engine's room Print says what the values mean and checks their ranges.
/// </summary>
public sealed record MaskDefinition
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary><c>text</c>, <c>ellipse</c> or <c>path</c>.</summary>
    public required string Shape { get; init; }

    /// <summary>The words of a text.</summary>
    public string? Text { get; init; }

    /// <summary>The data of an SVG path.</summary>
    public string? Path { get; init; }

    /// <summary>Height of an ellipse over its width; 1 where missing.</summary>
    public double? HeightOverWidth { get; init; }

    /// <summary>Width on the finished print, mm.</summary>
    [JsonPropertyName("widthMm")]
    public required double WidthMillimetres { get; init; }

    /// <summary>Its middle to the right of the print's, mm; 0 where missing.</summary>
    [JsonPropertyName("xMm")]
    public double? XMillimetres { get; init; }

    /// <summary>Its middle above the print's, mm; 0 where missing.</summary>
    [JsonPropertyName("yMm")]
    public double? YMillimetres { get; init; }

    /// <summary>How far it is turned to the left, degrees; 0 where missing.</summary>
    public double? TurnDegrees { get; init; }

    /// <summary><c>blocks</c>: the shape holds light back; <c>passes</c>: what is around it does. Blocks where missing.</summary>
    public string? Sense { get; init; }

    /// <summary><c>tray</c>: before the paper; <c>beforeHole</c>: outside. Tray where missing.</summary>
    public string? Place { get; init; }

    /// <summary>From the paper to the tray, or from the hole outwards, mm.</summary>
    [JsonPropertyName("distanceMm")]
    public required double DistanceMillimetres { get; init; }
}
