using System.Text.Json.Serialization;

namespace Foramen.Journal.Sync;

/// <summary>The first line of a batch of entries on its way between a device and Home.</summary>
public sealed record SyncHead
{
    /// <summary>The version of the batch; 1.</summary>
    public required int ForamenSync { get; init; }

    /// <summary>How many entry lines follow. With fewer, the batch was cut and counts as none.</summary>
    public required int Entries { get; init; }

    /// <summary>From Home: the name of its store; cursors of another name mean nothing.</summary>
    public string? Epoch { get; init; }

    /// <summary>From Home: the cursor before these entries; empty, the beginning, where the device's own means nothing here.</summary>
    public string? From { get; init; }

    /// <summary>From Home: the cursor after these entries.</summary>
    public string? Next { get; init; }

    /// <summary>From Home: whether there is more.</summary>
    public bool? More { get; init; }
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(SyncHead))]
[JsonSerializable(typeof(SyncMark))]
[JsonSerializable(typeof(PushAnswer))]
internal sealed partial class SyncJson : JsonSerializerContext;
