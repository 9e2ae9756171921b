using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;
using Foramen.Storage;

namespace Foramen.Home.Tests.Operations;

/// <summary>Home as a process, watched from outside: its metrics reach a collector, its log is structured and keeps secrets, it stops without cutting anyone off.</summary>
public class OperationsTests
{
    private const string PlaceName = "Behind-the-secret-weir";
    private const string Latitude = "52.34567";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Metrics_reach_a_collector_and_name_nobody()
    {
        using var folder = new TempFolder();
        await using var collector = await MetricsCollector.StartAsync();
        await using var home = await WatchedHome.StartAsync(
            new() { ["OTEL_EXPORTER_OTLP_ENDPOINT"] = collector.Address, ["OTEL_EXPORTER_OTLP_PROTOCOL"] = "http/protobuf", ["OTEL_METRIC_EXPORT_INTERVAL"] = "300" },
            "--data", folder.Path);
        (await home.Client.PostAsync("/api/entries", Batch([Place(), .. Enumerable.Range(1, 4).Select(i => Writing.Entry("phone", i))]), Cancellation)).EnsureSuccessStatusCode();
        (await home.Client.PostAsync("/api/entries", Batch(Place()), Cancellation)).EnsureSuccessStatusCode();
        await home.Client.GetStringAsync("/api/entries?epoch=&after=", Cancellation);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        limit.CancelAfter(TimeSpan.FromSeconds(60));
        while (collector.Sums.GetValueOrDefault("foramen.entries.given") < 5 || collector.Sums.GetValueOrDefault("foramen.batches") < 2)
        {
            await Task.Delay(100, limit.Token);
        }

        Assert.Equal(5, collector.Sums["foramen.entries.taken"]);
        Assert.Equal(1, collector.Sums["foramen.entries.known"]);
        // Names of the semantic conventions for HTTP and .NET.
        Assert.Contains("http.server.request.duration", collector.Names.Keys);
        Assert.Contains(collector.Names.Keys, name => name.StartsWith("dotnet.gc", StringComparison.Ordinal));
        Assert.All(collector.Bodies, body => Assert.DoesNotContain(PlaceName, body, StringComparison.Ordinal));
        using var health = JsonDocument.Parse(await home.Client.GetStringAsync("/health", Cancellation));
        Assert.Equal(("ok", 5), (health.RootElement.GetProperty("status").GetString(), health.RootElement.GetProperty("entries").GetInt32()));
        Assert.Equal(0, await home.StopAsync());
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task The_log_is_structured_speaks_of_failures_and_holds_no_secret()
    {
        using var folder = new TempFolder();
        await using var home = await WatchedHome.StartAsync([], "--data", folder.Path, "--log", "json", "--address", "https://home.example/");
        using var code = JsonDocument.Parse(await (await home.Client.PostAsync("/api/codes", null, Cancellation)).Content.ReadAsStringAsync(Cancellation));
        var secret = code.RootElement.GetProperty("code").GetString()!;
        using var pairing = new StringContent(JsonSerializer.Serialize(new { code = secret, name = "phone of Ada" }), Encoding.UTF8, "application/json");
        using var paired = JsonDocument.Parse(await (await home.Client.PostAsync("/api/pair", pairing, Cancellation)).Content.ReadAsStringAsync(Cancellation));
        var token = paired.RootElement.GetProperty("token").GetString()!;
        home.Client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", token);
        (await home.Client.PostAsync("/api/entries", Batch(Place()), Cancellation)).EnsureSuccessStatusCode();
        // Refused, damaged, and what nobody foresaw: a file where the folder of pictures should be.
        Assert.Equal(HttpStatusCode.BadRequest, (await home.Client.PostAsync("/api/entries", new ByteArrayContent([1, 2]), Cancellation)).StatusCode);
        var pictures = folder.File("pictures");
        if (Directory.Exists(pictures))
        {
            Directory.Delete(pictures, recursive: true);
        }

        await File.WriteAllTextAsync(pictures, "in the way", Cancellation);
        var jpeg = new ByteArrayContent([0xFF, 0xD8, 0xFF, 0xE0]) { Headers = { ContentType = new MediaTypeHeaderValue("application/octet-stream") } };
        var failed = await home.Client.PutAsync($"/api/pictures/{new string('a', 64)}?offset=0&total=4", jpeg, Cancellation);
        Assert.Equal(HttpStatusCode.InternalServerError, failed.StatusCode);
        Assert.Empty(await failed.Content.ReadAsStringAsync(Cancellation));
        Assert.Equal(0, await home.StopAsync());

        var (said, complained) = await home.SaidAsync();
        Assert.Empty(complained);
        var lines = said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Contains(lines, line => line.GetProperty("Message").GetString()!.StartsWith("Foramen Home: http", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.GetProperty("LogLevel").GetString() == "Error");
        foreach (var hidden in new[] { secret, token, "phone of Ada", PlaceName, Latitude })
        {
            Assert.DoesNotContain(hidden, said, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task On_SIGTERM_what_was_begun_is_finished_and_nobody_else_is_let_in(bool picture)
    {
        using var folder = new TempFolder();
        await using var home = await WatchedHome.StartAsync([], "--data", folder.Path);
        var body = picture
            ? Enumerable.Repeat((byte)7, 50_000).Prepend((byte)0xE0).Prepend((byte)0xFF).Prepend((byte)0xD8).Prepend((byte)0xFF).ToArray()
            : SyncBatch.Write([.. Enumerable.Range(1, 200).Select(i => Writing.Line(Writing.Entry("phone", i)))]);
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(body));
        var what = picture ? $"PUT /api/pictures/{hash}?offset=0&total={body.Length}" : "POST /api/entries";
        var kind = picture ? "application/octet-stream" : SyncBatch.MediaType;
        using var client = new TcpClient { NoDelay = true };
        await client.ConnectAsync(IPAddress.Loopback, home.Port, Cancellation);
        var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"{what} HTTP/1.1\r\nHost: 127.0.0.1:{home.Port}\r\nContent-Type: {kind}\r\nContent-Length: {body.Length}\r\n\r\n"), Cancellation);
        await stream.WriteAsync(body.AsMemory(0, body.Length / 2), Cancellation);
        await Task.Delay(300, Cancellation);

        home.Terminate();
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        limit.CancelAfter(TimeSpan.FromSeconds(9));
        while (await IsListeningAsync(home.Port))
        {
            await Task.Delay(50, limit.Token);
        }

        await stream.WriteAsync(body.AsMemory(body.Length / 2), Cancellation);
        using var reader = new StreamReader(stream, Encoding.ASCII);
        Assert.Equal("HTTP/1.1 200 OK", await reader.ReadLineAsync(limit.Token));
        Assert.Equal(0, await home.ExitAsync());
        if (picture)
        {
            Assert.Single(Directory.GetFiles(folder.File("pictures"), $"*{hash}*", SearchOption.AllDirectories));
        }
        else
        {
            await using var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(folder.File("journal.sqlite")), cancellation: Cancellation);
            Assert.Equal(200, (await store.VerifyAsync(Cancellation)).Entries);
        }
    }

    [Fact]
    public async Task Health_says_503_while_the_database_is_away_and_tells_strangers_nothing_more()
    {
        await using var server = await PostgresServer.StartAsync();
        using var folder = new TempFolder();
        await using var home = await WatchedHome.StartAsync([], "--data", folder.Path, "--postgres", await server.NewDatabaseAsync());
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/health") { Headers = { { "X-Forwarded-For", "203.0.113.7" } } };
        Assert.Equal("""{"status":"ok"}""", await (await home.Client.SendAsync(asked, Cancellation)).Content.ReadAsStringAsync(Cancellation));
        await server.StopAsync();
        var away = await home.Client.GetAsync("/health", Cancellation);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, away.StatusCode);
        Assert.Equal("""{"status":"the database is away"}""", await away.Content.ReadAsStringAsync(Cancellation));
        Assert.Equal(0, await home.StopAsync());
    }

    private static async Task<bool> IsListeningAsync(int port)
    {
        using var client = new TcpClient();
        try
        {
            await client.ConnectAsync(IPAddress.Loopback, port, Cancellation);
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static Entry Place()
    {
        var at = new DateTimeOffset(2026, 5, 3, 10, 0, 0, TimeSpan.Zero);
        return Entry.Create(
            Ulid.From(at, new byte[10]), DeviceId.Parse("phone"), 100, at,
            new PlaceDefined { Place = Ulid.From(at, new byte[10]), Name = PlaceName, LatitudeDegrees = double.Parse(Latitude, System.Globalization.CultureInfo.InvariantCulture), LongitudeDegrees = 5 });
    }

    private static ByteArrayContent Batch(params Entry[] entries)
        => new(SyncBatch.Write([.. entries.Select(Writing.Line)])) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } };
}
