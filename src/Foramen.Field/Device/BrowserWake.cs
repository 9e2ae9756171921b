using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>The screen wake lock, by wwwroot/js/wake.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserWake : IWake
{
    private const string Module = "wake";

    private Task? loading;

    public event Action? Changed;

    public WakeState State { get; private set; }

    public async Task HoldAsync()
    {
        await Load();
        await Hold();
    }

    public async Task ReleaseAsync()
    {
        await Load();
        await Release();
    }

    private Task Load() => loading ??= LoadModule();

    private async Task LoadModule()
    {
        await JSHost.ImportAsync(Module, "../js/wake.js");
        Watch(state =>
        {
            State = state switch
            {
                "held" => WakeState.Held,
                "refused" => WakeState.Refused,
                "missing" => WakeState.Missing,
                _ => WakeState.Off,
            };
            Changed?.Invoke();
        });
    }

    [JSImport("watch", Module)]
    private static partial void Watch([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> callback);

    [JSImport("hold", Module)]
    private static partial Task Hold();

    [JSImport("release", Module)]
    private static partial Task Release();
}
