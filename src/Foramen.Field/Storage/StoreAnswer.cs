using System.Text.Json;

namespace Foramen.Field.Storage;

/// <summary>Any answer of journal-store.js.</summary>
internal sealed record StoreAnswer
{
    public string? Refusal { get; init; }

    public string? Detail { get; init; }

    public string? Device { get; init; }

    public long Sequence { get; init; }

    public IReadOnlyList<StoredLine>? Lines { get; init; }

    public IReadOnlyList<long>? Positions { get; init; }

    /// <summary>Another tab wrote first.</summary>
    public bool IsBehind => Refusal == "behind";

    /// <summary>Reads an answer; a refusal other than "behind" is thrown.</summary>
    public static StoreAnswer Of(string json)
    {
        var answer = JsonSerializer.Deserialize(json, StoreJson.Default.StoreAnswer)!;
        return answer.Refusal switch
        {
            null or "behind" => answer,
            "full" => throw new StoreRefusedException(StoreRefusal.Full, answer.Detail ?? ""),
            "unavailable" => throw new StoreRefusedException(StoreRefusal.Unavailable, answer.Detail ?? ""),
            "blocked" => throw new StoreRefusedException(StoreRefusal.Blocked, answer.Detail ?? ""),
            _ => throw new StoreRefusedException(StoreRefusal.Failed, answer.Detail ?? answer.Refusal),
        };
    }
}
