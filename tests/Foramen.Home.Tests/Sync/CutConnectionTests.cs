using System.Net.Sockets;
using System.Text;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Sync;

/// <summary>The connection is cut at every byte of a batch, on the way there and on the way back, over real sockets.</summary>
public class CutConnectionTests(Servers servers)
{
    private const int BatchEntries = 3;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H3")]
    public async Task A_batch_cut_at_any_byte_on_its_way_is_not_taken_in_and_is_taken_in_whole_when_sent_again(bool postgres)
    {
        await using var fixture = await StartAsync(postgres);
        var batch = SyncBatch.Write([.. Enumerable.Range(1, BatchEntries).Select(i => Writing.Line(Writing.Entry("phone", i)))]);
        var request = Request(fixture, "POST /api/entries", $"Content-Type: {SyncBatch.MediaType}\r\nContent-Length: {batch.Length}\r\n", batch);
        for (var length = 0; length < request.Length; length++)
        {
            await SendAsync(fixture, request.AsMemory(0, length), readAtMost: 0);
        }

        // Whatever Home still makes of the pieces, it makes before it ends; an empty journal shows that it made nothing.
        Assert.Equal(0, (await fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
        var answer = await SendAsync(fixture, request, readAtMost: int.MaxValue);
        Assert.StartsWith("HTTP/1.1 200", answer, StringComparison.Ordinal);
        Assert.Equal(BatchEntries, (await fixture.Home.Store.VerifyAsync(Cancellation)).Entries);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H3")]
    public async Task An_answer_cut_at_any_byte_is_told_from_a_whole_one_and_asking_again_gives_all(bool postgres)
    {
        await using var fixture = await StartAsync(postgres);
        await fixture.Home.Store!.AppendAsync(Writing.Batch("phone", 1, BatchEntries), cancellation: Cancellation);
        var request = Request(fixture, "GET /api/entries?epoch=&after=", "", []);
        var whole = await SendAsync(fixture, request, readAtMost: int.MaxValue);
        var bodyAt = whole.IndexOf("\r\n\r\n", StringComparison.Ordinal) + 4;
        var body = Encoding.UTF8.GetBytes(whole[bodyAt..]);
        Assert.Equal(BatchEntries, SyncBatch.Read(body).Lines.Count);
        for (var length = 0; length < body.Length; length++)
        {
            var cut = await SendAsync(fixture, request, readAtMost: bodyAt + length);
            Assert.Throws<BadBatchException>(() => SyncBatch.Read(Encoding.UTF8.GetBytes(cut[bodyAt..])));
        }

        Assert.Equal(body, Encoding.UTF8.GetBytes((await SendAsync(fixture, request, readAtMost: int.MaxValue))[bodyAt..]));
    }

    [Fact]
    [Trait("Promise", "H3")]
    public async Task An_acknowledgement_cut_at_any_byte_leads_to_no_double()
    {
        await using var fixture = await StartAsync(postgres: false);
        var batch = SyncBatch.Write([.. Enumerable.Range(1, BatchEntries).Select(i => Writing.Line(Writing.Entry("phone", i)))]);
        var request = Request(fixture, "POST /api/entries", $"Content-Type: {SyncBatch.MediaType}\r\nContent-Length: {batch.Length}\r\n", batch);
        var whole = await SendAsync(fixture, request, readAtMost: int.MaxValue);
        for (var length = 0; length <= whole.Length; length += 3)
        {
            await SendAsync(fixture, request, readAtMost: length);
        }

        Assert.Equal(BatchEntries, (await fixture.Home.Store!.VerifyAsync(Cancellation)).Entries);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H5")]
    public async Task Devices_weeks_behind_with_clocks_days_apart_end_with_the_same_entries_over_HTTP(bool postgres)
    {
        await using var fixture = await StartAsync(postgres);
        var devices = Enumerable.Range(0, 5).Select(_ => new MemoryDevice()).ToList();
        for (var round = 0; round < 4; round++)
        {
            for (var i = 0; i < devices.Count; i++)
            {
                // Device 4 has been away for weeks and meets Home only in the end.
                devices[i].Write(Enumerable.Range((round * 300) + 1, 300).Select(number => Writing.Entry($"dev{i}", number + (i * 86_400 * 9))));
                if (i < 4)
                {
                    await SyncRound.RunAsync(devices[i], new HttpSyncHome(fixture.Client), cancellation: Cancellation);
                }
            }
        }

        foreach (var device in devices.Append(devices[0]).Concat(devices))
        {
            await SyncRound.RunAsync(device, new HttpSyncHome(fixture.Client), cancellation: Cancellation);
        }

        Assert.Equal(6_000, (await fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
        Assert.All(devices, device => Assert.Equal(devices[0].Hashes, device.Hashes));
        Assert.Equal(6_000, devices[0].Hashes.Count());
    }

    private async Task<HomeFixture> StartAsync(bool postgres)
        => postgres ? await HomeFixture.StartAsync("--postgres", await (await servers.PostgresAsync()).NewDatabaseAsync()) : await HomeFixture.StartAsync();

    private static byte[] Request(HomeFixture fixture, string what, string headers, byte[] body)
        => [.. Encoding.ASCII.GetBytes($"{what} HTTP/1.1\r\nHost: {new Uri(fixture.Home.Address).Authority}\r\n{headers}Connection: close\r\n\r\n"), .. body];

    // Sends, ends its own side, and reads so many bytes at most before it hangs up.
    private static async Task<string> SendAsync(HomeFixture fixture, ReadOnlyMemory<byte> request, int readAtMost)
    {
        var address = new Uri(fixture.Home.Address);
        using var client = new TcpClient { NoDelay = true };
        await client.ConnectAsync(address.Host, address.Port, Cancellation);
        var stream = client.GetStream();
        try
        {
            await stream.WriteAsync(request, Cancellation);
            if (readAtMost == 0)
            {
                client.Client.Close(0);
                return "";
            }

            var buffer = new byte[Math.Min(readAtMost, 1_000_000)];
            var length = await stream.ReadAtLeastAsync(buffer, buffer.Length, throwOnEndOfStream: false, Cancellation);
            return Encoding.UTF8.GetString(buffer, 0, length);
        }
        catch (IOException)
        {
            return "";
        }
    }
}
