using System.Diagnostics;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Walks;

/// <summary>Walks through the app as someone would and counts what it costs. A step is one thing to decide or do; it may need several touches.</summary>
/// <param name="page">A phone.</param>
/// <param name="name">Of the scenario, for its pictures; none are taken without.</param>
internal sealed class Walker(IPage page, string? name)
{
    private static readonly string? Pictures = Environment.GetEnvironmentVariable("FORAMEN_WALKS_PICTURES");

    private readonly Stopwatch machine = new();

    public IPage Page => page;

    public int Steps { get; private set; }

    public int Touches { get; private set; }

    public int Keys { get; private set; }

    /// <summary>Until the app had answered, all steps together; what the walker itself takes is in it.</summary>
    public TimeSpan Machine => machine.Elapsed;

    /// <summary>One thing to do, whose end the page shows.</summary>
    /// <param name="act">The touches and keys.</param>
    /// <param name="answer">What is there when the app has answered.</param>
    public async Task StepAsync(Func<Task> act, ILocator answer)
    {
        Steps++;
        machine.Start();
        await act();
        await answer.First.WaitForAsync();
        machine.Stop();
        if (Pictures is not null && name is not null)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"{name}-{Steps:00}.png"), Animations = ScreenshotAnimations.Disabled });
        }
    }

    public async Task TouchAsync(ILocator what)
    {
        Touches++;
        await what.ClickAsync();
    }

    /// <summary>The one large action that says so.</summary>
    public Task PressAsync(string label) => TouchAsync(page.Locator(".thumb .main").Filter(new() { HasText = label }).Last);

    public Task LinkAsync(string label) => TouchAsync(page.GetByRole(AriaRole.Link, new() { Name = label, Exact = true }));

    public Task ButtonAsync(string label) => TouchAsync(page.GetByRole(AriaRole.Button, new() { Name = label, Exact = true }));

    /// <summary>One of the five places.</summary>
    public Task PlaceAsync(string place)
        => TouchAsync(page.GetByRole(AriaRole.Navigation, new() { Name = "Places" }).GetByRole(AriaRole.Link, new() { Name = place, Exact = true }));

    /// <summary>A choice: its words are touched, not the radio button beneath.</summary>
    public Task ChooseAsync(string label, ILocator? within = null)
        => TouchAsync((within ?? page.Locator("main")).Locator("label").Filter(new() { Has = page.GetByText(label, new() { Exact = true }) }).First);

    /// <summary>Touches a field and types, in place of what stands there.</summary>
    public async Task TypeAsync(string selector, string text)
    {
        Touches++;
        Keys += text.Length;
        await page.Locator(selector).FillAsync(text);
    }

    /// <summary>Drags a slider to a value.</summary>
    public async Task SlideAsync(string selector, string value)
    {
        Touches++;
        await page.Locator(selector).FillAsync(value);
    }

    /// <summary>A file: one touch opens the phone's chooser, one takes the picture.</summary>
    public async Task GiveAsync(string selector, params string[] path)
    {
        Touches += 2;
        await page.Locator(selector).SetInputFilesAsync(Path.Combine([Stage.Repository.Root, .. path]));
    }

    /// <summary>Touches a picture at fractions of its width and height.</summary>
    public async Task TouchAtAsync(string selector, double x, double y)
    {
        Touches++;
        await Stage.PageSteps.TouchAtAsync(page.Locator(selector), x, y);
    }

    /// <summary>Drags across a picture, from and to as fractions of its width and height.</summary>
    public async Task DragAsync(string selector, (double X, double Y) from, (double X, double Y) to)
    {
        Touches++;
        var element = page.Locator(selector);
        await element.ScrollIntoViewIfNeededAsync();
        var box = await element.BoundingBoxAsync() ?? throw new InvalidOperationException("Nothing to drag.");
        async Task MoveAsync((double X, double Y) at) => await page.Mouse.MoveAsync((float)(box.X + (at.X * box.Width)), (float)(box.Y + (at.Y * box.Height)), new() { Steps = 4 });
        await MoveAsync(from);
        await page.Mouse.DownAsync();
        await MoveAsync(to);
        await page.Mouse.UpAsync();
    }
}
