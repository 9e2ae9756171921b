using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>The orientation sensor, by wwwroot/js/level.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserLevel : ILevel
{
    private const string Module = "level";

    private bool loaded;

    public async Task<LevelState> StartAsync(Action<LevelReading> onReading)
    {
        if (!loaded)
        {
            await JSHost.ImportAsync(Module, "../js/level.js");
            loaded = true;
        }

        return await Start((beta, gamma, alpha) => onReading(LevelReading.FromOrientation(beta, gamma, double.IsNaN(alpha) ? null : alpha))) switch
        {
            "on" => LevelState.On,
            "refused" => LevelState.Refused,
            _ => LevelState.Missing,
        };
    }

    public void Stop()
    {
        if (loaded)
        {
            StopReading();
        }
    }

    [JSImport("start", Module)]
    private static partial Task<string> Start([JSMarshalAs<JSType.Function<JSType.Number, JSType.Number, JSType.Number>>] Action<double, double, double> callback);

    [JSImport("stop", Module)]
    private static partial void StopReading();
}
