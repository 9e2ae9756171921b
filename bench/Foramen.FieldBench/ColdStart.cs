using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>Cold starts in headless Chromium: a fresh context each time, so nothing is cached; the apps take turns within a round.</summary>
internal static class ColdStart
{
    private const string FirstHeading =
        """
        () => new Promise(resolve => {
          const look = () => performance.now() > 90_000 ? resolve(-1) : document.querySelector('h1') ? requestAnimationFrame(() => resolve(performance.now())) : setTimeout(look, 5);
          look();
        })
        """;

    public static async Task<IReadOnlyList<Measured>> MeasureAsync(IBrowser browser, IReadOnlyList<ServedApp> apps, int rounds)
    {
        var times = apps.ToDictionary(app => app, _ => new List<double>());
        var bytes = apps.ToDictionary(app => app, _ => 0L);
        for (var round = 0; round <= rounds; round++)
        {
            foreach (var app in apps)
            {
                var (milliseconds, transferred) = await StartAsync(browser, app);
                // The first round warms the machine's own caches and is not counted.
                if (round > 0)
                {
                    times[app].Add(milliseconds);
                    bytes[app] = transferred;
                }
            }
        }

        return [.. apps.Select(app => new Measured(app.Name, times[app], bytes[app]))];
    }

    private static async Task<(double Milliseconds, long Bytes)> StartAsync(IBrowser browser, ServedApp app)
    {
        await using var context = await browser.NewContextAsync(new() { ServiceWorkers = ServiceWorkerPolicy.Block });
        var page = await context.NewPageAsync();
        var complaints = new List<string>();
        page.Console += (_, message) => complaints.Add(message.Text);
        page.PageError += (_, error) => complaints.Add(error);
        var session = await context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        var bytes = 0.0;
        session.Event("Network.loadingFinished").OnEvent += (_, e) => bytes += e!.Value.GetProperty("encodedDataLength").GetDouble();
        await page.GotoAsync(app.Address, new() { WaitUntil = WaitUntilState.Commit, Timeout = 120_000 });
        var milliseconds = await page.EvaluateAsync<double>(FirstHeading);
        if (milliseconds < 0)
        {
            throw new InvalidOperationException($"{app.Name} drew no heading within 90 seconds. {string.Join(' ', complaints)}");
        }

        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        return (milliseconds, (long)bytes);
    }
}
