using System.Text.Json.Serialization;
using Foramen.Storage;

namespace Foramen.Home.Api;

/// <summary>What Home says of itself. <c>Access</c>: own (this machine), paired, needed, or none where Home keeps no journal. <c>Workshop</c>: the one the device is a member of.</summary>
internal sealed record HomeBody(int ForamenHome, string Access, bool ServesOthers, string? Device = null, string? Workshop = null);

internal sealed record PairRequest(string? Code, string? Name);

internal sealed record PairBody(string Token, int Device, string Name, string? Workshop = null);

internal sealed record CodeBody(string Code, DateTimeOffset Until, string Address, string QrSvg);

internal sealed record DeviceBody(int Id, string Name, DateTimeOffset PairedAt, DateTimeOffset LastMet, bool Revoked)
{
    public static DeviceBody Of(PairedDevice device) => new(device.Id, device.Name, device.PairedAt, device.LastMet, device.Revoked);
}

/// <summary>A line in the log, by the names that the host's own lines have.</summary>
internal sealed record AnnouncementBody(
    [property: JsonPropertyName("LogLevel")] string LogLevel, [property: JsonPropertyName("Category")] string Category, [property: JsonPropertyName("Message")] string Message);

internal sealed record WorkshopRequest(string? Name);

internal sealed record WorkshopBody(int Id, string Name, DateTimeOffset OpenedAt, bool Ended, IReadOnlyList<DeviceBody> Members);

internal sealed record HashesBody(IReadOnlyList<string>? Hashes);

internal sealed record ProgressBody(long Offset, bool Complete);

internal sealed record HealthBody(string Status, string? Database = null, string? Durability = null, long? Entries = null);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(HomeBody))]
[JsonSerializable(typeof(PairRequest))]
[JsonSerializable(typeof(PairBody))]
[JsonSerializable(typeof(CodeBody))]
[JsonSerializable(typeof(IReadOnlyList<DeviceBody>))]
[JsonSerializable(typeof(WorkshopRequest))]
[JsonSerializable(typeof(WorkshopBody))]
[JsonSerializable(typeof(IReadOnlyList<WorkshopBody>))]
[JsonSerializable(typeof(AnnouncementBody))]
[JsonSerializable(typeof(HashesBody))]
[JsonSerializable(typeof(ProgressBody))]
[JsonSerializable(typeof(HealthBody))]
internal sealed partial class HomeJson : JsonSerializerContext;
