using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>WebAudio and vibration, by wwwroot/js/sound.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserSignals : ISignals
{
    private const string Module = "sound";

    private Task? loading;

    public Task PrepareAsync() => loading ??= JSHost.ImportAsync(Module, "../js/sound.js");

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

    [JSImport("play", Module)]
    private static partial void PlaySound(string signal, double seconds);

    [JSImport("cancel", Module)]
    private static partial void CancelSounds();

    [JSImport("vibrate", Module)]
    private static partial bool VibrateNow(string pattern);
}
