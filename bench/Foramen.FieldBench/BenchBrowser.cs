using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>The system's Chromium, headless, with nothing going on in the background.</summary>
internal static class BenchBrowser
{
    private const string Executable = "/usr/bin/chromium";

    private static readonly string[] Quiet =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    public static Task<IBrowser> LaunchAsync(IPlaywright playwright)
        => playwright.Chromium.LaunchAsync(new() { ExecutablePath = Executable, Headless = true, ChromiumSandbox = false, Args = Quiet });
}
