using System.Text.Json.Serialization;

namespace Foramen.Field.Storage;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(StoreAnswer))]
[JsonSerializable(typeof(StoreHealth))]
internal sealed partial class StoreJson : JsonSerializerContext;
