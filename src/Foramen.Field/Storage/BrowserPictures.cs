using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using Foramen.Engine.Quantities;
using Foramen.Field.Texts;

namespace Foramen.Field.Storage;

/// <summary>Pictures in IndexedDB and the browser's own decoder, by wwwroot/js/photo.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserPictures : IPictures
{
    private const string Module = "photo";
    private const string StoreModule = "journal-store";

    private Task? loading;

    public async Task<string?> AddressOfAsync(string contentHash)
    {
        await Load();
        var url = await PictureUrl(contentHash);
        return url.Length == 0 ? null : url;
    }

    public async Task<TakenPicture?> TakeAsync(string inputId, int longSide)
    {
        await Load();
        return Take(await FromInput(inputId, longSide));
    }

    public async Task<TakenPicture?> ReadAsync(string contentHash, int longSide)
    {
        await Load();
        return Take(await FromStore(contentHash, longSide));
    }

    public async Task<bool> FetchAsync(string address, string contentHash, string mediaType)
    {
        await Load();
        return await FetchKept(address, contentHash, mediaType);
    }

    public async Task<byte[]?> ReadFileAsync(string inputId)
    {
        await Load();
        var length = await ReadFile(inputId);
        return length < 0 ? null : Bytes(length);
    }

    private static TakenPicture? Take(string json)
    {
        var answer = JsonSerializer.Deserialize(json, PictureJson.Default.PictureAnswer)!;
        switch (answer.Refusal)
        {
            case null:
                break;
            case "none":
                return null;
            case "undecodable":
                throw new RefusalException(Words.Storage.Undecodable(answer.Detail ?? ""));
            default:
                StoreAnswer.Of(json);
                return null;
        }

        var rgba = new byte[4 * answer.Width * answer.Height];
        CopyPixels(rgba);
        var file = Bytes(answer.ByteCount);
        return new TakenPicture(answer.Hash, answer.MediaType, file, answer.FullWidth, answer.FullHeight, answer.Width, answer.Height, rgba);
    }

    private static byte[] Bytes(int length)
    {
        var bytes = new byte[length];
        CopyBytes(bytes);
        Forget();
        return bytes;
    }

    private Task Load() => loading ??= LoadModules();

    private static async Task LoadModules()
    {
        await JSHost.ImportAsync(StoreModule, "../js/journal-store.js");
        await JSHost.ImportAsync(Module, "../js/photo.js");
    }

    [JSImport("fromInput", Module)]
    private static partial Task<string> FromInput(string inputId, int longSide);

    [JSImport("fromStore", Module)]
    private static partial Task<string> FromStore(string hash, int longSide);

    [JSImport("fetchKept", Module)]
    private static partial Task<bool> FetchKept(string address, string hash, string mediaType);

    [JSImport("readFile", Module)]
    private static partial Task<int> ReadFile(string inputId);

    [JSImport("copyPixels", Module)]
    private static partial void CopyPixels([JSMarshalAs<JSType.MemoryView>] Span<byte> rgba);

    [JSImport("copyBytes", Module)]
    private static partial void CopyBytes([JSMarshalAs<JSType.MemoryView>] Span<byte> bytes);

    [JSImport("forget", Module)]
    private static partial void Forget();

    [JSImport("pictureUrl", StoreModule)]
    private static partial Task<string> PictureUrl(string hash);
}
