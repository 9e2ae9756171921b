using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using Foramen.Home.Tests.Faults;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Storage;

/// <summary>A disk that is really full, where this machine lets the tests mount a small one; elsewhere SqliteStoreTests fill a database of so many pages.</summary>
public class FullDiskTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    [Trait("Promise", "H6")]
    public async Task A_full_disk_is_said_loses_nothing_acknowledged_and_all_goes_on_when_there_is_room()
    {
        using var disk = SmallDisk.Mount(kilobytes: 4_000, ballastKilobytes: 2_000);
        if (disk is null)
        {
            Assert.Skip("This machine lets the tests mount no file system.");
        }

        var acknowledged = 0;
        var home = await HomeHost.StartAsync(["--port", "0", "--data", disk.Path]);
        await using (home)
        {
            using var client = new HttpClient { BaseAddress = new Uri(home.Address) };
            HttpStatusCode status;
            while ((status = (await SendAsync(client, acknowledged)).StatusCode) == HttpStatusCode.OK && acknowledged < 20_000)
            {
                acknowledged += 50;
            }

            // RFC 4918, 11.5.
            Assert.Equal(HttpStatusCode.InsufficientStorage, status);
            var picture = new byte[400_000];
            new Random(1).NextBytes(picture);
            ((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF, 0xE0]).CopyTo(picture);
            Assert.Equal(HttpStatusCode.InsufficientStorage, (await SendAsync(client, picture)).StatusCode);
            disk.MakeRoom();
            Assert.Equal(HttpStatusCode.OK, (await SendAsync(client, acknowledged)).StatusCode);
            Assert.Equal(HttpStatusCode.OK, (await SendAsync(client, picture)).StatusCode);
            Assert.Equal(acknowledged + 50, (await home.Store!.VerifyAsync(Cancellation)).Entries);
        }
    }

    private static async Task<HttpResponseMessage> SendAsync(HttpClient client, int from)
    {
        using var batch = new ByteArrayContent(SyncBatch.Write([.. Enumerable.Range(from + 1, 50).Select(i => Writing.Line(Writing.Entry("phone", i)))]))
        {
            Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) },
        };
        return await client.PostAsync("/api/entries", batch, Cancellation);
    }

    private static async Task<HttpResponseMessage> SendAsync(HttpClient client, byte[] picture)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(picture));
        using var progress = System.Text.Json.JsonDocument.Parse(await client.GetStringAsync($"/api/pictures/{hash}/progress", Cancellation));
        var offset = progress.RootElement.GetProperty("offset").GetInt32();
        using var content = new ByteArrayContent(picture, offset, picture.Length - offset) { Headers = { ContentType = new MediaTypeHeaderValue("application/octet-stream") } };
        return await client.PutAsync($"/api/pictures/{hash}?offset={offset}&total={picture.Length}", content, Cancellation);
    }
}
