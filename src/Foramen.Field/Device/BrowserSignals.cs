using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>WebAudio and vibration, by wwwroot/js/sound.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserSignals : ISignals
{
    private const string Module = "sound";

    private Task? loading;

    public event Action? Ready;

    public Task PrepareAsync() => loading ??= LoadAsync();

    public void Play(Signal signal, TimeSpan after = default)
    {
        if (loading is { IsCompletedSuccessfully: true })
        {
            PlaySound(signal switch { Signal.Tick => "tick", Signal.Cue => "cue", _ => "end" }, after.TotalSeconds);
        }
    }

    public void Cancel()
    {
        if (loading is { IsCompletedSuccessfully: true })
        {
            CancelSounds();
        }
    }

    public void Vibrate(params IReadOnlyList<int> milliseconds)
    {
        if (loading is { IsCompletedSuccessfully: true })
        {
            VibrateNow(string.Join(',', milliseconds));
        }
    }

    private async Task LoadAsync()
    {
        await JSHost.ImportAsync(Module, "../js/sound.js");
        Watch(() => Ready?.Invoke());
    }

    [JSImport("watch", Module)]
    private static partial void Watch([JSMarshalAs<JSType.Function>] Action callback);

    [JSImport("play", Module)]
    private static partial void PlaySound(string signal, double seconds);

    [JSImport("cancel", Module)]
    private static partial void CancelSounds();

    [JSImport("vibrate", Module)]
    private static partial bool VibrateNow(string pattern);
}
