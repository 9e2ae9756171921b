namespace Foramen.EndToEnd.Stage;

/// <summary>The system's Chromium, as every test starts it.</summary>
internal static class Chromium
{
    public static string Path => new[] { "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome" }.FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("Chromium is missing; ./test installs it.");

    public static string[] Arguments { get; } =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
        "--disable-sync", "--autoplay-policy=no-user-gesture-required",
    ];
}
