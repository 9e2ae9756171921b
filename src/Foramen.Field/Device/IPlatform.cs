using Foramen.Field.Time;

namespace Foramen.Field.Device;

/// <summary>Small facts about the device, the page's look, and the app's own updates.</summary>
public interface IPlatform : IZone
{
    /// <summary>Settings as JSON text; empty where none are kept.</summary>
    string ReadSettings();

    /// <summary>Keeps settings; false where the browser will not keep them beyond this page.</summary>
    bool WriteSettings(string json);

    /// <summary>Shows a theme: paper, night or red.</summary>
    void ShowTheme(string theme);

    /// <summary>Starts looking for new versions; reports "ready" (works offline) and "update" (a new version waits).</summary>
    Task WatchUpdatesAsync(Action<string> onState);

    /// <summary>Lets the waiting version take over; the page starts again.</summary>
    void ApplyUpdate();

    /// <summary>The page is shown again after being hidden.</summary>
    event Action? Returned;

    /// <summary>Where an element was touched: each 0 to 1 from its top left; null where it is not shown.</summary>
    (double X, double Y)? PlaceIn(string elementId, double clientX, double clientY);

    /// <summary>Opens the browser's own print dialogue, which also writes PDF files.</summary>
    void Print();

    /// <summary>The demo outing that the host offers, as JSON lines; empty where it offers none.</summary>
    Task<string> DemoOutingAsync();
}
