using System.Globalization;
using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>From the touch that opens the strips of a box to its curve with the band drawn, as the page itself sees it: the fit of a strip of twelve patches, with covariance, and the drawing.</summary>
internal static class StripFitTime
{
    private const string Open =
        """
        () => new Promise(resolve => {
          const start = performance.now();
          const observer = new MutationObserver(() => {
            if (document.querySelector('.chart .band')) {
              observer.disconnect();
              requestAnimationFrame(() => resolve(performance.now() - start));
            }
          });
          observer.observe(document.body, { childList: true, subtree: true });
          document.querySelector('a[href$="/strips"]').click();
        })
        """;

    /// <summary>Densities of a direct-positive paper, 1.9/(1 + (t/60 s)^2), with errors of 0.02 and one misread by 0.25.</summary>
    private static IEnumerable<double> Densities => Enumerable.Range(0, 12)
        .Select(i => 0.08 + (1.9 / (1 + Math.Pow(8 * Math.Pow(2, 0.5 * i) / 60, 2))) + (i == 6 ? 0.25 : i % 2 == 0 ? 0.02 : -0.02));

    public static async Task<double> MedianMillisecondsAsync(IPage page, string address, int rounds)
    {
        async Task PressAsync() => await page.Locator(".thumb .main").Last.ClickAsync();
        async Task BoxAsync()
        {
            await page.GotoAsync(address + "/bench");
            await page.Locator("a.gear[href^='bench/paper']").First.ClickAsync();
        }

        await BoxAsync();
        await page.Locator("a[href$='/strips']").ClickAsync();
        await page.Locator("a[href$='/strip']").ClickAsync();
        await page.Locator("#strip-through-1").CheckAsync();
        await page.Locator("#strip-lux").FillAsync("0.05");
        await page.Locator("#strip-count").FillAsync("12");
        await PressAsync();
        var number = 0;
        foreach (var density in Densities)
        {
            await page.Locator($"#strip-density-{++number}").FillAsync(density.ToString("0.00", CultureInfo.InvariantCulture));
        }

        await PressAsync();
        await page.Locator(".chart .band").WaitForAsync();
        await BoxAsync();
        var times = new List<double>();
        for (var round = 0; round <= rounds; round++)
        {
            await page.Locator("a[href$='/strips']").WaitForAsync();
            var milliseconds = await page.EvaluateAsync<double>(Open);
            // The first round compiles what is hot and is not counted.
            if (round > 0)
            {
                times.Add(milliseconds);
            }

            // The strip to make next is looked for after the curve is drawn.
            await page.Locator("a[href*='for=failure']").WaitForAsync();
            await page.GoBackAsync();
        }

        return times.Order().ElementAt(times.Count / 2);
    }
}
