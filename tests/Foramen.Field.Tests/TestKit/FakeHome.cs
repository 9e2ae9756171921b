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

    public Task<HomeAnswer> AskAsync(string method, string path, string token, string mediaType = "", string body = "")
    {
        Asked++;
        return Task.FromResult(Always ?? (method, path.Split('?')[0]) switch
        {
            ("GET", "api/home") => Json($$"""{"foramenHome":1,"access":"{{(token.Length > 0 ? "paired" : Access)}}","servesOthers":true}"""),
            ("POST", "api/entries") => Push(body),
            ("GET", "api/entries") => Pull(Uri.UnescapeDataString(path[(path.IndexOf("after=", StringComparison.Ordinal) + 6)..].Split('&')[0])),
            ("POST", "api/pair") => body.Contains("GOODCODE", StringComparison.Ordinal)
                ? Json("""{"token":"secret","device":3,"name":"phone"}""")
                : new HomeAnswer(403, "application/json", """{"refusal":"notPaired","sentence":"This code is not good."}"""),
            ("GET", "api/devices") => Json("""[{"id":3,"name":"tablet","lastMet":"2026-05-03T11:00:00+00:00","pairedAt":"2026-05-03T11:00:00+00:00","revoked":false}]"""),
            ("POST", "api/codes") => Json("""{"code":"ABCDE12345","until":"2026-05-03T12:10:00+00:00","address":"https://home.example/settings#pair=ABCDE12345","qrSvg":"<svg/>"}"""),
            ("POST", "api/pictures/missing") => Json(JsonSerializer.Serialize(new { hashes = JsonDocument.Parse(body).RootElement.GetProperty("hashes").EnumerateArray().Select(one => one.GetString()).Where(hash => !Pictures.Contains(hash!)) })),
            _ => new HomeAnswer(404, "application/json", "{}"),
        });
    }

    public Task<bool> SendPictureAsync(string contentHash, string token) => Task.FromResult(Pictures.Add(contentHash));

    public Task<bool> FetchPictureAsync(string contentHash, string token) => Task.FromResult(Pictures.Contains(contentHash));

    public Task<IReadOnlyList<string>> KeptPicturesAsync(IReadOnlyList<string> contentHashes) => Task.FromResult(contentHashes);

    private static HomeAnswer Json(string text) => new(200, "application/json", text);

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
