using System.Text.Json.Serialization;

namespace Foramen.Exchange.Places;

/// <summary>JSON of place files.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, MaxDepth = 16)]
[JsonSerializable(typeof(PlaceList))]
[JsonSerializable(typeof(PlaceRecord))]
internal sealed partial class PlaceJson : JsonSerializerContext;
