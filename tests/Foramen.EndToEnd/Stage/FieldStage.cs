using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Foramen.EndToEnd.Stage.FieldStage))]

namespace Foramen.EndToEnd.Stage;

/// <summary>One Home and one browser for all tests; each test takes a fresh context (its own storage).</summary>
public sealed class FieldStage : IAsyncLifetime
{
    private IPlaywright playwright = null!;
    private IBrowser browser = null!;

    public HomeProcess Home { get; private set; } = null!;

    public IPlaywright Playwright => playwright;

    public async ValueTask InitializeAsync()
    {
        Home = await HomeProcess.StartAsync();
        playwright = await Microsoft.Playwright.Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium.Path, Headless = true, Args = Chromium.Arguments, ChromiumSandbox = false,
        });
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
        Home.Dispose();
    }

    /// <summary>A phone held upright.</summary>
    /// <param name="address">Another Home than the usual one.</param>
    /// <param name="locale">Its language.</param>
    public Task<IBrowserContext> PhoneAsync(string? address = null, string locale = "en-GB") => ContextAsync(address, 390, 844, touch: true, locale);

    /// <summary>A large screen.</summary>
    /// <param name="address">Another Home than the usual one.</param>
    public Task<IBrowserContext> DesktopAsync(string? address = null) => ContextAsync(address, 1280, 800, touch: false);

    private async Task<IBrowserContext> ContextAsync(string? address, int width, int height, bool touch, string locale = "en-GB")
    {
        var context = await browser.NewContextAsync(new()
        {
            BaseURL = address ?? Home.Address, ViewportSize = new() { Width = width, Height = height }, HasTouch = touch, IsMobile = touch,
            ReducedMotion = ReducedMotion.Reduce, TimezoneId = "Europe/Amsterdam", Locale = locale,
        });
        context.SetDefaultTimeout(60_000);
        return context;
    }
}
