using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>The time slider again, with a turning wheel, somebody who goes away, drifting clouds and swaying water on the demo photograph.</summary>
internal static class MotionRepaint
{
    private static readonly (string Name, string How, double Left, double Top, double Width, double Height, string? Field, string? Value)[] Regions =
    [
        ("wheel", "turns", 0.596, 0.497, 0.053, 0.0705, "#moving-turn", "20"),
        ("cyclist", "goesAway", 0.515, 0.484, 0.056, 0.08, null, null),
        ("clouds", "flows", 0.1, 0.05, 0.31, 0.42, "#moving-crossing", "900"),
        ("water", "sways", 0.1, 0.57, 0.25, 0.3, null, null),
    ];

    /// <summary>From the Plan step back to Frame, where regions are marked, and to Plan again.</summary>
    public static async Task<SliderRepaint.Repaints> MeasureAsync(IPage page)
    {
        await page.Locator(".rail").GetByRole(AriaRole.Link, new() { Name = "Frame" }).ClickAsync();
        foreach (var region in Regions)
        {
            await page.Locator("#moving-add").ClickAsync();
            await DragAsync(page, (region.Left, region.Top), (region.Left + region.Width, region.Top + region.Height));
            await page.Locator("#moving-name").FillAsync(region.Name);
            await page.Locator("#moving-how").SelectOptionAsync(region.How);
            if (region.Field is not null)
            {
                await page.Locator(region.Field).FillAsync(region.Value!);
            }

            await page.GetByRole(AriaRole.Button, new() { Name = "Keep this", Exact = true }).ClickAsync();
            await page.Locator("#moving-add").WaitForAsync();
        }

        await page.Locator(".rail").GetByRole(AriaRole.Link, new() { Name = "Plan" }).ClickAsync();
        await page.Locator("#plan-moving").WaitForAsync();
        return await SliderRepaint.MeasureAsync(page);
    }

    private static async Task DragAsync(IPage page, (double X, double Y) from, (double X, double Y) to)
    {
        var overlay = page.Locator("#frame-overlay");
        await overlay.EvaluateAsync("e => e.scrollIntoView({ block: 'start' })");
        var seen = await overlay.EvaluateAsync<double[]>(
            """
            e => {
              const svg = e.querySelector('svg'), image = e.querySelector('image'), box = svg.getBoundingClientRect(), view = svg.viewBox.baseVal;
              const scale = box.width / view.width;
              return [box.x - view.x * scale, box.y - view.y * scale, image.width.baseVal.value * scale, image.height.baseVal.value * scale];
            }
            """);
        async Task MoveAsync((double X, double Y) place) => await page.Mouse.MoveAsync((float)(seen[0] + (place.X * seen[2])), (float)(seen[1] + (place.Y * seen[3])));
        await MoveAsync(from);
        await page.Mouse.DownAsync();
        await MoveAsync(to);
        await page.Mouse.UpAsync();
    }
}
