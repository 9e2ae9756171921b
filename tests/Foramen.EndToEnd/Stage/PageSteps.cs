using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>What the journeys do again and again.</summary>
internal static class PageSteps
{
    public static async Task OpenAsync(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.Locator("h1").WaitForAsync();
    }

    /// <summary>Waits until the app would start without a network.</summary>
    public static Task WaitUntilOfflineReadyAsync(this IPage page)
        => page.EvaluateAsync("navigator.serviceWorker.ready.then(() => true)");

    public static async Task ThemeAsync(this IPage page, string theme)
        => await page.EvaluateAsync("theme => { document.documentElement.dataset.theme = theme; }", theme);

    public static ILocator Primary(this IPage page) => page.Locator(".thumb .main").Last;
}
