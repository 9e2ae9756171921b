using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>Takes the published app to the steps that are measured: Plan with a predicted print, and Expose with its hole open.</summary>
internal static class SheetJourney
{
    private static readonly (double X, double Y, string Name, string Wanted)[] Tones =
        [(0.3465, 0.275, "elevator", "textured highlight"), (0.56, 0.83, "towpath", "mid")];

    /// <summary>From an empty journal to the Plan step of a sheet with a photograph and two tones.</summary>
    public static async Task PlanAsync(IPage page, string address, string photograph)
    {
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync(address);
        await page.GetByLabel("Name of the outing").FillAsync("Bench");
        await PressAsync(page, "Start an outing");
        await LinkAsync(page, "Bench");
        await LinkAsync(page, "Add a camera");
        await page.Locator("#camera-name").FillAsync("Box A");
        await page.Locator("#camera-hole").FillAsync("0.35");
        await page.Locator("#camera-focal").FillAsync("63");
        await page.Locator("#camera-width").FillAsync("127");
        await page.Locator("#camera-height").FillAsync("102");
        await PressAsync(page, "Save");
        await LinkAsync(page, "Add a paper");
        await page.Locator("#paper-name").FillAsync("Positive");
        await page.GetByLabel("Direct positive").CheckAsync();
        await PressAsync(page, "Save");
        await LinkAsync(page, "Sheet");
        await PressAsync(page, "New sheet");
        await page.Locator("#name").FillAsync("Elevator");
        await PressAsync(page, "Load the sheet");
        await page.Locator("#photo-choose").SetInputFilesAsync(photograph);
        await page.Locator("#frame-overlay").WaitForAsync();
        await PressAsync(page, "On to Meter");
        foreach (var (x, y, name, wanted) in Tones)
        {
            var scene = page.Locator("#meter-scene");
            await scene.Locator("img").WaitForAsync();
            await scene.ScrollIntoViewIfNeededAsync();
            var box = await scene.BoundingBoxAsync() ?? throw new InvalidOperationException("The photograph is not on the page.");
            await scene.ClickAsync(new() { Position = new() { X = (float)(x * box.Width), Y = (float)(y * box.Height) } });
            await page.Locator("#tone-name").FillAsync(name);
            await page.Locator("#new-tone").GetByLabel(wanted, new() { Exact = true }).CheckAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Add this tone" }).ClickAsync();
            await page.Locator(".tones").GetByText(name, new() { Exact = true }).WaitForAsync();
        }

        await PressAsync(page, "On to Plan");
        await page.Locator("#plan-print").WaitForAsync();
    }

    /// <summary>On from Plan, with no flash and a long time, to an open hole.</summary>
    public static async Task OpenHoleAsync(IPage page)
    {
        await page.Locator("#plan-time").FillAsync("11");
        await page.Locator("#plan-flash").FillAsync("0");
        await PressAsync(page, "Keep this plan");
        await PressAsync(page, "Open the hole");
        await page.GetByText("left in this light").WaitForAsync();
    }

    private static Task PressAsync(IPage page, string label) => page.Locator(".thumb .main").Last.Filter(new() { HasText = label }).ClickAsync();

    private static Task LinkAsync(IPage page, string name) => page.GetByRole(AriaRole.Link, new() { Name = name }).First.ClickAsync();
}
