using System.Text;
using System.Text.Json;
using Foramen.Field.Homes;
using Foramen.Journal.Sync;

namespace Foramen.Field.Tests.TestKit;

/// <summary>A Home in memory behind the way to it; away, busy or strange on request. Several devices may share one.</summary>
internal sealed class FakeHome : IHomeLink
{
    public List<BatchLine> Entries { get; } = [];

    public string Access { get; set; } = "own";

    /// <summary>Answers everything like this; null for good answers.</summary>
    public HomeAnswer? Always { get; set; }

    public int Asked { get; private set; }

    public bool MayMeet { get; set; } = true;

    public HashSet<string> Pictures { get; } = [];

    /// <summary>The pictures on this device; null for all.</summary>
    public HashSet<string>? Kept { get; set; }

    /// <summary>The workshop that the device is a member of, once it has a token.</summary>
    public string? Workshop { get; set; }

    /// <summary>The workshops of this Home, as it writes them.</summary>
    public List<string> Workshops { get; } = [];

    /// <summary>What was asked to be deleted.</summary>
    public List<string> Deleted { get; } = [];

    public Task<HomeAnswer> AskAsync(string method, string path, string token, string mediaType = "", string body = "")
    {
        Asked++;
        return Task.FromResult(Always ?? (method, path.Split('?')[0]) switch
        {
            ("GET", "api/home") => Json($$"""{"foramenHome":1,"access":"{{(token.Length > 0 ? "paired" : Access)}}","servesOthers":true{{(Workshop is null ? "" : $",\"workshop\":\"{Workshop}\"")}}}"""),
            ("POST", "api/entries") => Push(body),
            ("GET", "api/entries") => Pull(Uri.UnescapeDataString(path[(path.IndexOf("after=", StringComparison.Ordinal) + 6)..].Split('&')[0])),
            ("POST", "api/pair") => body.Contains("GOODCODE", StringComparison.Ordinal)
                ? Json($$"""{"token":"secret","device":3,"name":"phone"{{(Workshop is null ? "" : $",\"workshop\":\"{Workshop}\"")}}}""")
                : new HomeAnswer(403, "application/json", """{"refusal":"notPaired","sentence":"This code is not good."}"""),
            ("GET", "api/devices") => Json("""[{"id":3,"name":"tablet","lastMet":"2026-05-03T11:00:00+00:00","pairedAt":"2026-05-03T11:00:00+00:00","revoked":false}]"""),
            ("POST", "api/codes") => Json("""{"code":"ABCDE12345","until":"2026-05-03T12:10:00+00:00","address":"https://home.example/settings#pair=ABCDE12345","qrSvg":"<svg/>"}"""),
            ("GET", "api/workshops") when Workshop is not null => new HomeAnswer(403, "application/json", """{"refusal":"failed","sentence":"Only the workshop's leader may do this."}"""),
            ("GET", "api/workshops") => Json($"[{string.Join(',', Workshops)}]"),
            ("POST", "api/workshops") => Open(body),
            ("POST", "api/workshops/1/code") => Json("""{"code":"JOIN123456","until":"2026-05-03T16:00:00+00:00","address":"https://home.example/workshop#join=JOIN123456","qrSvg":"<svg/>"}"""),
            ("DELETE", _) => Delete(path),
            ("POST", "api/pictures/missing") => Json(JsonSerializer.Serialize(new { hashes = JsonDocument.Parse(body).RootElement.GetProperty("hashes").EnumerateArray().Select(one => one.GetString()).Where(hash => !Pictures.Contains(hash!)) })),
            _ => new HomeAnswer(404, "application/json", "{}"),
        });
    }

    public Task<bool> SendPictureAsync(string contentHash, string token) => Task.FromResult(Pictures.Add(contentHash));

    public Task<bool> FetchPictureAsync(string contentHash, string token) => Task.FromResult(Pictures.Contains(contentHash) && Kept?.Add(contentHash) is not false);

    public Task<IReadOnlyList<string>> KeptPicturesAsync(IReadOnlyList<string> contentHashes) => Task.FromResult<IReadOnlyList<string>>([.. contentHashes.Where(hash => Kept?.Contains(hash) is not false)]);

    private static HomeAnswer Json(string text) => new(200, "application/json", text);

    private HomeAnswer Open(string body)
    {
        Workshops.Add($$"""{"id":1,"name":{{JsonDocument.Parse(body).RootElement.GetProperty("name").GetRawText()}},"ended":false,"openedAt":"2026-05-03T12:00:00+00:00","members":[]}""");
        return Json(Workshops[^1]);
    }

    private HomeAnswer Delete(string path)
    {
        Deleted.Add(path);
        return new HomeAnswer(204, "", "");
    }

    private HomeAnswer Push(string body)
    {
        var before = Entries.Count;
        Entries.AddRange(SyncBatch.Read(Encoding.UTF8.GetBytes(body)).Lines.Where(line => !Entries.Exists(known => known.Entry.Equals(line.Entry))));
        return Json(new PushAnswer("fake", Entries.Count - before, 0, Cursor(before), Cursor(Entries.Count)).ToJson());
    }

    private HomeAnswer Pull(string after)
    {
        var from = after.Length == 0 ? 0 : int.Parse(after, System.Globalization.CultureInfo.InvariantCulture);
        var lines = Entries.Skip(from).Select(line => line.Line).ToList();
        return new HomeAnswer(200, SyncBatch.MediaType, Encoding.UTF8.GetString(SyncBatch.Write(
            new SyncHead { ForamenSync = 1, Entries = 0, Epoch = "fake", From = after, Next = Cursor(Entries.Count), More = false }, lines)));
    }

    private static string Cursor(int count) => count == 0 ? "" : $"{count}";
}
