using System.Globalization;
using System.Text;
using Foramen.EndToEnd.Stage;
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
            await page.Locator("#frame-overlay").DragOnPhotographAsync((region.Left, region.Top), (region.Left + region.Width, region.Top + region.Height));
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

    /// <summary>The page of results.</summary>
    public static string Write(SliderRepaint.Repaints stood, SliderRepaint.Repaints moved, string version, string load)
    {
        static double At(SliderRepaint.Repaints repaints, double part) => repaints.Times.Order().ElementAt((int)(part * (repaints.Times.Length - 1)));
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Line($"# What moves: measured");
        Line($"");
        Line($"{DateTime.UtcNow:yyyy-MM-dd}, {Environment.ProcessorCount} threads, headless Chromium {version}. One run of `bench/field motion`, load average at its end {load}.");
        Line($"A move of the time slider to the {moved.Width}×{moved.Height} print on its canvas, with a wheel, somebody who goes away, clouds and water marked on the demo photograph.");
        Line($"");
        Line($"| | median | nine in ten within |");
        Line($"| --- | ---: | ---: |");
        Line($"| nothing moves | {At(stood, 0.5):0.0} ms | {At(stood, 0.9):0.0} ms |");
        Line($"| four moving regions | {At(moved, 0.5):0.0} ms | {At(moved, 0.9):0.0} ms |");
        var marks = new MarkRows($"{Environment.ProcessorCount} threads, headless Chromium {version}", load);
        marks.Add("motion.preview", $"{moved.Width}×{moved.Height} print with four moving regions, median", $"{At(moved, 0.5):0.0} ms", $"", $"{At(moved, 0.5):0.0} ms");
        return text.Append(marks).ToString();
    }
}
