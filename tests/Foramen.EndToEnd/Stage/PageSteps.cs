using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>What the journeys do again and again.</summary>
internal static partial class PageSteps
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

    /// <summary>Touches the one large action once it says so.</summary>
    public static Task PressAsync(this IPage page, string label) => page.Primary().Filter(new() { HasText = label }).ClickAsync();

    /// <summary>Waits for the page of a step.</summary>
    public static Task AtStepAsync(this IPage page, string step)
        => page.GetByRole(AriaRole.Heading, new() { Name = step, Level = 1, Exact = true }).WaitForAsync();

    /// <summary>Touches an element at fractions of its width and height.</summary>
    public static async Task TouchAtAsync(this ILocator element, double x, double y)
    {
        await element.ScrollIntoViewIfNeededAsync();
        var box = await element.BoundingBoxAsync() ?? throw new InvalidOperationException("Nothing to touch.");
        await element.ClickAsync(new() { Position = new() { X = (float)(x * box.Width), Y = (float)(y * box.Height) } });
    }

    /// <summary>Waits until a picture is drawn.</summary>
    public static async Task DrawnAsync(this ILocator image)
    {
        await image.WaitForAsync();
        await image.EvaluateAsync("image => image.decode()");
    }

    /// <summary>What the numerals show, and the page's clock at that very moment, s.</summary>
    public static async Task<(double Shown, double Clock, string Text)> NumeralsAsync(this IPage page)
    {
        var read = await page.GetByRole(AriaRole.Timer).First.EvaluateAsync<NumeralsRead>("e => ({ text: e.textContent, clock: Date.now() })");
        return (Seconds(read.Text), read.Clock / 1000, read.Text);
    }

    /// <summary>What the numerals show when they next change, s, negative where it is over; and the page's clock at that very moment.</summary>
    public static async Task<(double Shown, DateTimeOffset Clock)> NextSecondAsync(this IPage page)
    {
        var read = await page.GetByRole(AriaRole.Timer).First.EvaluateAsync<NumeralsRead>(
            """
            e => new Promise(resolve => new MutationObserver((_, observer) => {
              observer.disconnect();
              resolve({ text: e.textContent, clock: Date.now() });
            }).observe(e, { characterData: true, childList: true, subtree: true }))
            """);
        return (Seconds(read.Text), DateTimeOffset.FromUnixTimeMilliseconds((long)read.Clock));
    }

    /// <summary>Goes to a step of this sheet by the rail.</summary>
    public static async Task GotoStepAsync(this IPage page, string step)
    {
        await page.Locator(".rail").GetByRole(AriaRole.Link, new() { Name = step }).ClickAsync();
        await page.AtStepAsync(step);
    }

    /// <summary>Meets Home by the button of the settings, until Home has answered with what it holds.</summary>
    public static async Task MeetHomeAsync(this IPage page)
    {
        await page.OpenAsync("/settings");
        // It says something else while they meet, as they do when the page is loaded.
        var meet = page.GetByRole(AriaRole.Button, new() { Name = "Meet Home now" });
        await page.RunAndWaitForResponseAsync(
            () => meet.ClickAsync(), response => response.Request.Method == "GET" && response.Url.Contains("/api/entries", StringComparison.Ordinal));
        await meet.WaitForAsync();
    }

    private static double Seconds(string clock)
    {
        var match = ClockText().Match(clock);
        Assert.True(match.Success, $"“{clock}” is no time.");
        var seconds = (60 * double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture)) + double.Parse(match.Groups[3].Value, CultureInfo.InvariantCulture);
        return match.Groups[1].Length > 0 ? -seconds : seconds;
    }

    [GeneratedRegex("^(\\+?)([0-9]+):([0-9]{2})$")]
    private static partial Regex ClockText();

    private sealed record NumeralsRead
    {
        public string Text { get; init; } = "";

        public double Clock { get; init; }
    }
}
