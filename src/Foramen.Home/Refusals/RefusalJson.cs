using System.Text.Json.Serialization;

namespace Foramen.Home.Refusals;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(RefusalBody))]
internal sealed partial class RefusalJson : JsonSerializerContext;
