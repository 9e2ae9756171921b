using Microsoft.Playwright;

namespace Foramen.EndToEnd.Walks;

/// <summary>Stretches that several walks have in common.</summary>
internal static class Legs
{
    /// <summary>The title of a page.</summary>
    public static ILocator Title(this Walker walker, string title) => walker.Page.GetByRole(AriaRole.Heading, new() { Name = title, Level = 1, Exact = true });

    public static ILocator Says(this Walker walker, string text) => walker.Page.Locator("main").GetByText(text);

    /// <summary>From the outing to the step Frame of a new sheet.</summary>
    public static async Task LoadAsync(this Walker walker, string camera, string paper)
    {
        await walker.StepAsync(() => walker.PressAsync("New sheet"), walker.Title("New sheet"));
        await walker.StepAsync(() => walker.ChooseAsync(camera), walker.Page.Locator("input:checked + .face").Filter(new() { HasText = camera }));
        await walker.StepAsync(() => walker.ChooseAsync(paper), walker.Page.Locator("input:checked + .face").Filter(new() { HasText = paper }));
        await walker.StepAsync(() => walker.PressAsync("Load the sheet"), walker.Title("Frame"));
    }

    /// <summary>The demo photograph, and the frame where it fell.</summary>
    public static Task PhotographAsync(this Walker walker)
        => walker.StepAsync(() => walker.GiveAsync("#photo-choose", "demo", "canal-basin.jpg"), walker.Page.Locator("#frame-overlay"));

    public static Task OnAsync(this Walker walker, string to) => walker.StepAsync(() => walker.PressAsync($"On to {to}"), walker.Title(to));

    public static Task ToneAsync(this Walker walker, double x, double y, string name, string wanted)
        => walker.StepAsync(
            async () =>
            {
                await walker.TouchAtAsync("#meter-scene", x, y);
                await walker.TypeAsync("#tone-name", name);
                await walker.ChooseAsync(wanted, walker.Page.Locator("#new-tone"));
                await walker.ButtonAsync("Add this tone");
            },
            walker.Page.Locator(".tones").GetByText(name, new() { Exact = true }));

    /// <summary>From the photograph to the plan, with three tones.</summary>
    public static async Task ToPlanAsync(this Walker walker)
    {
        await walker.PhotographAsync();
        await walker.OnAsync("Meter");
        await walker.Page.Locator("#meter-scene img").WaitForAsync();
        await walker.ToneAsync(0.3465, 0.275, "elevator in the sun", "textured highlight");
        await walker.ToneAsync(0.3585, 0.275, "edge of a silo", "open shadow");
        await walker.ToneAsync(0.56, 0.83, "towpath", "mid");
        await walker.StepAsync(() => walker.PressAsync("On to Plan"), walker.Page.Locator("#plan-time"));
    }

    /// <summary>The camera or paper of that name on the bench.</summary>
    public static async Task GearAsync(this Walker walker, string name)
    {
        await walker.StepAsync(() => walker.PlaceAsync("Bench"), walker.Title("Bench"));
        await walker.StepAsync(() => walker.TouchAsync(walker.Page.Locator("a.gear").Filter(new() { HasText = name }).First), walker.Page.Locator("form"));
    }

    /// <summary>A step of the sheet that is in hand, by the row of steps.</summary>
    public static Task StepOfSheetAsync(this Walker walker, string step)
        => walker.StepAsync(() => walker.TouchAsync(walker.Page.Locator(".rail").GetByRole(AriaRole.Link, new() { Name = step })), walker.Title(step));

    /// <summary>Opens the demo's sheet that is planned and not yet exposed, and exposes it.</summary>
    public static async Task ExposeAsync(this Walker walker, bool cloud)
    {
        await walker.StepAsync(() => walker.TouchAsync(walker.Page.Locator("a.sheet-card").Filter(new() { HasText = "The lift bridge, closed" }).First), walker.Title("Expose"));
        await walker.StepAsync(() => walker.PressAsync("Open the hole"), walker.Says("left in this light"));
        await walker.Page.Clock.FastForwardAsync(15_000);
        if (cloud)
        {
            await walker.LightAsync("Cloud");
            await walker.Page.Clock.FastForwardAsync(20_000);
            await walker.LightAsync("Sun");
        }

        await walker.Page.Clock.FastForwardAsync(32_000);
        await walker.StepAsync(() => walker.PressAsync("Close the hole now"), walker.Says("Open it again"));
    }

    private static Task LightAsync(this Walker walker, string light)
        => walker.StepAsync(() => walker.ButtonAsync(light), walker.Page.GetByRole(AriaRole.Button, new() { Name = light, Exact = true, Pressed = true }));
}
