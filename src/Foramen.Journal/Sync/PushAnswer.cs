using System.Text.Json;

namespace Foramen.Journal.Sync;

/// <summary>What Home says after it has committed a batch.</summary>
/// <param name="Epoch">The name of its store.</param>
/// <param name="Taken">How many entries were new to it.</param>
/// <param name="Known">How many it had.</param>
/// <param name="Before">Its cursor before the batch.</param>
/// <param name="After">Its cursor after it; between the two lie only entries of this batch.</param>
public sealed record PushAnswer(string Epoch, int Taken, int Known, string Before, string After)
{
    /// <summary>The answer as JSON.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, SyncJson.Default.PushAnswer);

    /// <summary>Reads an answer.</summary>
    /// <exception cref="HomeRefusedException">It is none.</exception>
    public static PushAnswer FromJson(ReadOnlySpan<byte> json)
    {
        try
        {
            return JsonSerializer.Deserialize(json, SyncJson.Default.PushAnswer) is { Epoch: not null, Before: not null, After: not null } answer ? answer : throw Unreadable(null);
        }
        catch (JsonException e)
        {
            throw Unreadable(e);
        }
    }

    private static HomeRefusedException Unreadable(Exception? cause) => new(HomeRefusal.CutShort, "Home's answer was cut short.", cause: cause);
}
