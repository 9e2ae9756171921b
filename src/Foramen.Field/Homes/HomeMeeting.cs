using System.Text;
using System.Text.Json;
using Foramen.Field.Texts;
using Foramen.Journal.Sync;

namespace Foramen.Field.Homes;

/// <summary>Home as the meeting's code wants it, over the browser's own requests.</summary>
internal sealed class HomeMeeting(IHomeLink link, string token) : ISyncHome
{
    // Small pages: reading them must not be felt in the hand.
    private const int PageEntries = 250;

    public async Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation)
        => PushAnswer.FromJson(Encoding.UTF8.GetBytes(Good(
            await link.AskAsync("POST", "api/entries", token, SyncBatch.MediaType, Encoding.UTF8.GetString(batch)), "application/json")));

    public async Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation)
        => Encoding.UTF8.GetBytes(Good(
            await link.AskAsync("GET", $"api/entries?epoch={Uri.EscapeDataString(epoch)}&after={Uri.EscapeDataString(cursor)}&most={PageEntries}", token), SyncBatch.MediaType));

    /// <summary>Sees that it was done.</summary>
    /// <exception cref="HomeRefusedException">It was not.</exception>
    public static void Done(HomeAnswer answer)
    {
        if (answer.Status != 204)
        {
            Good(answer, "");
        }
    }

    /// <summary>The body of a good answer.</summary>
    /// <exception cref="HomeRefusedException">It is none.</exception>
    public static string Good(HomeAnswer answer, string kind)
    {
        if (answer.Is(kind))
        {
            return answer.Text;
        }

        if (answer.Status == 0)
        {
            throw new HomeRefusedException(HomeRefusal.Away, Words.Homes.Away);
        }

        HomeRefusalWords? words = null;
        try
        {
            words = answer.Kind == "application/json" ? JsonSerializer.Deserialize(answer.Text, HomeAnswers.Default.HomeRefusalWords) : null;
        }
        catch (JsonException)
        {
            // Cut on its way; the status still tells enough.
        }

        var why = words?.Refusal switch
        {
            "notPaired" => HomeRefusal.NotPaired,
            "busy" => HomeRefusal.Busy,
            "full" => HomeRefusal.Full,
            "badEntry" => HomeRefusal.BadEntry,
            "cutShort" => HomeRefusal.CutShort,
            _ => answer.Status is 502 or 503 or 504 ? HomeRefusal.Busy : HomeRefusal.Failed,
        };
        throw new HomeRefusedException(why, words?.Sentence ?? Words.Homes.Strange(answer.Status), words?.Line);
    }
}
