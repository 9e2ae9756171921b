using System.Text.Json.Serialization;

namespace Foramen.Field.Storage;

/// <summary>Any answer of photo.js.</summary>
internal sealed record PictureAnswer
{
    public string? Refusal { get; init; }

    public string? Detail { get; init; }

    public string Hash { get; init; } = "";

    public string MediaType { get; init; } = "";

    public int ByteCount { get; init; }

    public int Width { get; init; }

    public int Height { get; init; }

    public int FullWidth { get; init; }

    public int FullHeight { get; init; }
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PictureAnswer))]
internal sealed partial class PictureJson : JsonSerializerContext;
