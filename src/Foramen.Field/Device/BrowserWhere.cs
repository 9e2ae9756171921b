using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>The device's place, by wwwroot/js/where.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserWhere : IWhere
{
    private const string Module = "where";

    private bool loaded;

    public async Task<(double Latitude, double Longitude)?> AskAsync()
    {
        if (!loaded)
        {
            await JSHost.ImportAsync(Module, "../js/where.js");
            loaded = true;
        }

        return await Ask() ? (Latitude(), Longitude()) : null;
    }

    [JSImport("ask", Module)]
    private static partial Task<bool> Ask();

    [JSImport("latitude", Module)]
    private static partial double Latitude();

    [JSImport("longitude", Module)]
    private static partial double Longitude();
}
