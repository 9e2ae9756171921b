using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>wwwroot/js/platform.js; loaded before anything is shown.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserPlatform : IPlatform
{
    private const string Module = "platform";

    private BrowserPlatform()
    {
    }

    public event Action? Returned;

    public static async Task<BrowserPlatform> LoadAsync()
    {
        await JSHost.ImportAsync(Module, "../js/platform.js");
        var platform = new BrowserPlatform();
        OnReturn(() => platform.Returned?.Invoke());
        return platform;
    }

    public TimeSpan OffsetAt(DateTimeOffset instant) => TimeSpan.FromMinutes(OffsetMinutes(instant.ToUnixTimeMilliseconds()));

    /// <summary>The signs the browser's language puts before tenths and between thousands.</summary>
    public static (string Decimal, string Group) NumberSigns() => Signs() is [var tenths, var thousands] ? (tenths, thousands) : ("", "");

    public string ReadSettings() => Read();

    public bool WriteSettings(string json) => Write(json);

    public void ShowTheme(string theme) => Theme(theme);

    public Task WatchUpdatesAsync(Action<string> onState) => WatchUpdates(onState);

    public void ApplyUpdate() => Apply();

    public (double X, double Y)? PlaceIn(string elementId, double clientX, double clientY)
        => Place(elementId, clientX, clientY) is [var x, var y] ? (x, y) : null;

    public void Print() => PrintPage();

    public Task<string> DemoOutingAsync() => DemoOuting();

    [JSImport("printPage", Module)]
    private static partial void PrintPage();

    [JSImport("demoOuting", Module)]
    private static partial Task<string> DemoOuting();

    [JSImport("offsetMinutes", Module)]
    private static partial int OffsetMinutes([JSMarshalAs<JSType.Number>] long unixMilliseconds);

    [JSImport("numberSigns", Module)]
    private static partial string[] Signs();

    [JSImport("readSettings", Module)]
    private static partial string Read();

    [JSImport("writeSettings", Module)]
    private static partial bool Write(string json);

    [JSImport("showTheme", Module)]
    private static partial void Theme(string theme);

    [JSImport("watchUpdates", Module)]
    private static partial Task WatchUpdates([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> callback);

    [JSImport("applyUpdate", Module)]
    private static partial void Apply();

    [JSImport("onReturn", Module)]
    private static partial void OnReturn([JSMarshalAs<JSType.Function>] Action callback);

    [JSImport("placeIn", Module)]
    private static partial double[] Place(string id, double clientX, double clientY);
}
