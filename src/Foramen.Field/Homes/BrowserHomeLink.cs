using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace Foramen.Field.Homes;

/// <summary>wwwroot/js/home.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserHomeLink : IHomeLink
{
    private const string Module = "home";

    private Task? loading;
    private bool loaded;

    public bool MayMeet => !loaded || Holds();

    public async Task<HomeAnswer> AskAsync(string method, string path, string token, string mediaType = "", string body = "")
    {
        await Load();
        return JsonSerializer.Deserialize(await Ask(method, path, token, mediaType, body), HomeAnswers.Default.HomeAnswer)!;
    }

    public async Task<bool> SendPictureAsync(string contentHash, string token)
    {
        await Load();
        return await SendPicture(contentHash, token);
    }

    public async Task<bool> FetchPictureAsync(string contentHash, string token)
    {
        await Load();
        return await FetchPicture(contentHash, token);
    }

    public async Task<IReadOnlyList<string>> KeptPicturesAsync(IReadOnlyList<string> contentHashes)
    {
        await Load();
        return (await KeptPictures(string.Join(' ', contentHashes))).Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private Task Load() => loading ??= LoadModule();

    private async Task LoadModule()
    {
        await JSHost.ImportAsync("journal-store", "../js/journal-store.js");
        await JSHost.ImportAsync(Module, "../js/home.js");
        await Hold();
        loaded = true;
    }

    [JSImport("ask", Module)]
    private static partial Task<string> Ask(string method, string path, string token, string mediaType, string body);

    [JSImport("hold", Module)]
    private static partial Task Hold();

    [JSImport("holds", Module)]
    private static partial bool Holds();

    [JSImport("sendPicture", Module)]
    private static partial Task<bool> SendPicture(string hash, string token);

    [JSImport("fetchPicture", Module)]
    private static partial Task<bool> FetchPicture(string hash, string token);

    [JSImport("keptPictures", Module)]
    private static partial Task<string> KeptPictures(string hashes);
}
