using System.Text.Json.Serialization;

namespace Foramen.Journal.Kit;

/// <summary>Reading and writing of kit bodies without reflection, so that the browser can trim.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    WriteIndented = true)]
[JsonSerializable(typeof(CameraDefinition))]
[JsonSerializable(typeof(PaperDefinition))]
[JsonSerializable(typeof(MaskDefinition))]
[JsonSerializable(typeof(MotionFile))]
public sealed partial class KitJson : JsonSerializerContext;
