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

    /// <summary>A phone in it, without a service worker, so that every load is the network's.</summary>
    public static Task<IBrowserContext> PhoneAsync(IBrowser browser) => browser.NewContextAsync(new()
    {
        ViewportSize = new() { Width = 390, Height = 844 }, DeviceScaleFactor = 2, HasTouch = true, IsMobile = true, ServiceWorkers = ServiceWorkerPolicy.Block,
    });
}
