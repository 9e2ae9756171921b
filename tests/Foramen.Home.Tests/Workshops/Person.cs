using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.Sync;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Workshops;

/// <summary>Someone with a phone: what it holds, and its way to Home.</summary>
internal sealed class Person : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 3, 12, 0, 0, TimeSpan.FromHours(2));
    private readonly DeviceId device;
    private readonly Random chance;
    private int written;

    private Person(HttpClient client, int id, string name, MemoryDevice phone)
    {
        (Client, Id, Phone) = (client, id, phone);
        device = DeviceId.Parse(name);
        chance = new Random(name[0]);
    }

    public HttpClient Client { get; private set; }

    /// <summary>Its number at Home; 0 for the machine Home runs on.</summary>
    public int Id { get; private set; }

    public MemoryDevice Phone { get; }

    /// <summary>The machine that Home runs on.</summary>
    public static Person AtHome(HomeFixture fixture) => new(fixture.NewClient(), 0, "home", new MemoryDevice());

    /// <summary>Someone who types a code.</summary>
    public static async Task<Person> JoinAsync(HomeFixture fixture, string code, string name)
    {
        var person = new Person(fixture.NewClient(), 0, name, new MemoryDevice());
        await person.JoinAsync(code, name);
        return person;
    }

    /// <summary>The same phone joins again.</summary>
    public async Task JoinAsync(string code, string name)
    {
        Client.DefaultRequestHeaders.Authorization = null;
        var answer = await AskAsync(HttpMethod.Post, "/api/pair", new { code, name });
        answer.EnsureSuccessStatusCode();
        using var json = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Id = json.RootElement.GetProperty("device").GetInt32();
        Client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", json.RootElement.GetProperty("token").GetString());
    }

    public Task<HttpResponseMessage> AskAsync(HttpMethod method, string path, object? body = null)
    {
        var request = new HttpRequestMessage(method, path)
        {
            Content = body is null ? null : new StringContent(JsonSerializer.Serialize(body), Encoding.UTF8, "application/json"),
        };
        return Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public Task<HttpResponseMessage> SendAsync(params Entry[] entries)
    {
        var content = new ByteArrayContent(SyncBatch.Write([.. entries.Select(Writing.Line)])) { Headers = { ContentType = new MediaTypeHeaderValue(SyncBatch.MediaType) } };
        return Client.PostAsync("/api/entries", content, TestContext.Current.CancellationToken);
    }

    /// <summary>Writes something down, on the phone.</summary>
    public Entry Write(EntryBody body)
    {
        var entry = Make(body);
        Phone.Write([entry]);
        return entry;
    }

    /// <summary>An entry that is not on the phone yet.</summary>
    public Entry Make(EntryBody body) => Entry.Create(NewId(), device, ++written, Noon.AddSeconds(written), body);

    public Entry MakeRaw(string kind, string body) => Entry.CreateRaw(NewId(), device, ++written, Noon.AddSeconds(written), kind, 1, body);

    public Ulid NewId()
    {
        var bytes = new byte[Ulid.ChanceBytes];
        chance.NextBytes(bytes);
        return Ulid.From(Noon.AddSeconds(written), bytes);
    }

    public Task<SyncReport> MeetAsync() => SyncRound.RunAsync(Phone, new HttpSyncHome(Client), cancellation: TestContext.Current.CancellationToken);

    public bool Holds(Entry entry) => Phone.Hashes.Contains(entry.Hash);

    public void Dispose() => Client.Dispose();
}
