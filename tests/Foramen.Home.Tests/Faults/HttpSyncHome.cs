using System.Net.Http.Headers;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Faults;

/// <summary>Home over HTTP, as a device reaches it.</summary>
internal sealed class HttpSyncHome(HttpClient client) : ISyncHome
{
    public async Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation)
    {
        using var content = new ByteArrayContent(batch) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } };
        return PushAnswer.FromJson(await AnswerAsync(() => client.PostAsync("/api/entries", content, cancellation), cancellation));
    }

    public Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation)
        => AnswerAsync(() => client.GetAsync($"/api/entries?epoch={epoch}&after={cursor}", cancellation), cancellation);

    private static async Task<byte[]> AnswerAsync(Func<Task<HttpResponseMessage>> ask, CancellationToken cancellation)
    {
        try
        {
            using var response = await ask();
            var body = await response.Content.ReadAsByteArrayAsync(cancellation);
            return response.IsSuccessStatusCode
                ? body
                : throw new HomeRefusedException((int)response.StatusCode == 503 ? HomeRefusal.Busy : HomeRefusal.Failed, $"{(int)response.StatusCode}: {System.Text.Encoding.UTF8.GetString(body)}");
        }
        catch (Exception e) when (e is HttpRequestException or IOException or TaskCanceledException)
        {
            throw new HomeRefusedException(HomeRefusal.CutShort, e.Message, cause: e);
        }
    }
}
