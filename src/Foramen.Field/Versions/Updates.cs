using Foramen.Field.Device;
using Foramen.Field.Storage;
using Foramen.Journal.Fold;

namespace Foramen.Field.Versions;

/// <summary>New versions of the app: announced, and started only on request and never while a sheet is running.</summary>
public sealed class Updates(IPlatform platform, JournalSession session)
{
    private bool watching;

    /// <summary>Whether everything is on the device.</summary>
    public bool WorksOffline { get; private set; }

    /// <summary>Whether a new version waits.</summary>
    public bool Waits { get; private set; }

    /// <summary>Whether it may start now: no hole is open, no flash and no bath is running.</summary>
    public bool MayStart => !Running.Any(session.Ledger);

    /// <summary>Something of this has changed.</summary>
    public event Action? Changed;

    /// <summary>Starts watching.</summary>
    public async Task WatchAsync()
    {
        if (watching)
        {
            return;
        }

        watching = true;
        await platform.WatchUpdatesAsync(state =>
        {
            WorksOffline |= state == "ready";
            Waits |= state == "update";
            Changed?.Invoke();
        });
    }

    /// <summary>Starts the new version, if it may.</summary>
    public void Start()
    {
        if (Waits && MayStart)
        {
            platform.ApplyUpdate();
        }
    }
}
