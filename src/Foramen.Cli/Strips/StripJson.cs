using System.Text.Json.Serialization;

namespace Foramen.Cli.Strips;

/// <summary>Strip files without reflection.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, WriteIndented = true)]
[JsonSerializable(typeof(StripDescription))]
internal sealed partial class StripJson : JsonSerializerContext;
