using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>Share sheet or download, by wwwroot/js/share.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserShare : IShare
{
    private const string Module = "share";

    private Task? loading;

    public async Task<HandedOn> HandAsync(string fileName, string mediaType, byte[] bytes, bool preferShare = true)
    {
        await (loading ??= JSHost.ImportAsync(Module, "../js/share.js"));
        Prepare(fileName, mediaType, bytes);
        return await Hand(preferShare) switch
        {
            "shared" => HandedOn.Shared,
            "saved" => HandedOn.Saved,
            _ => HandedOn.Stopped,
        };
    }

    [JSImport("prepare", Module)]
    private static partial void Prepare(string fileName, string mediaType, [JSMarshalAs<JSType.MemoryView>] Span<byte> bytes);

    [JSImport("hand", Module)]
    private static partial Task<string> Hand(bool preferShare);
}
