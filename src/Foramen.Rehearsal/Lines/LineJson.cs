using System.Text.Json.Serialization;

namespace Foramen.Rehearsal.Lines;

/// <summary>Reading and writing of the lines without reflection.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    AllowOutOfOrderMetadataProperties = true)]
[JsonSerializable(typeof(RehearsalLine))]
public sealed partial class LineJson : JsonSerializerContext;
