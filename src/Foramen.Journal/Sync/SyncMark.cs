using System.Text.Json;
using System.Text.Json.Serialization;

namespace Foramen.Journal.Sync;

/// <summary>How far a device and a Home have got with each other. Kept by the device; losing it costs only repeated work.</summary>
/// <param name="Epoch">The name of Home's store; empty before they first met.</param>
/// <param name="Cursor">Up to where in Home's order of arrival everything is here: Home's own word, empty at the beginning.</param>
/// <param name="SentThrough">The position in the device's own store up to which Home has acknowledged everything.</param>
/// <param name="Generation">How often everything had to be compared anew with this store.</param>
public sealed record SyncMark(string Epoch, string Cursor, long SentThrough, int Generation = 0)
{
    /// <summary>Before they first met.</summary>
    public static SyncMark Never { get; } = new("", "", 0);

    /// <summary>Where entries that come now come from. What came from elsewhere, or from the same store before it was put back, may be missing there.</summary>
    [JsonIgnore]
    public string Origin => $"{Epoch}#{Generation}";

    /// <summary>The mark as JSON.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, SyncJson.Default.SyncMark);

    /// <summary>Reads a mark; anything that is none counts as never having met.</summary>
    public static SyncMark FromJson(string? json)
    {
        try
        {
            return string.IsNullOrEmpty(json) ? Never : JsonSerializer.Deserialize(json, SyncJson.Default.SyncMark) is { Epoch: not null, Cursor: not null } mark ? mark : Never;
        }
        catch (JsonException)
        {
            return Never;
        }
    }
}
