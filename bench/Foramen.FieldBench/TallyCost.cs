using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>The part of one core that all of Chromium's processes use while a page is shown, against the same browser with an empty page.</summary>
internal static class TallyCost
{
    private static readonly TimeSpan Watched = TimeSpan.FromSeconds(20);

    public static async Task<double> PartOfACoreAsync(IBrowser browser) => (await PartsOfACoreAsync(browser)).Values.Sum();

    /// <summary>The same by kind of process: the page's own is the renderer, what is painted without a graphics card is the GPU's.</summary>
    public static async Task<IReadOnlyDictionary<string, double>> PartsOfACoreAsync(IBrowser browser)
    {
        var session = await browser.NewBrowserCDPSessionAsync();
        var (before, from) = (await CpuSecondsAsync(session), DateTimeOffset.UtcNow);
        await Task.Delay(Watched);
        var after = await CpuSecondsAsync(session);
        var seconds = (DateTimeOffset.UtcNow - from).TotalSeconds;
        await session.DetachAsync();
        return after.ToDictionary(one => one.Key, one => (one.Value - before.GetValueOrDefault(one.Key)) / seconds);
    }

    /// <summary>What the page's thread has done since counting was turned on, by the browser's own count, s.</summary>
    public static async Task<IReadOnlyDictionary<string, double>> TasksAsync(ICDPSession page)
    {
        var answer = await page.SendAsync("Performance.getMetrics") ?? throw new InvalidOperationException("Chromium does not say what the page does.");
        return answer.GetProperty("metrics").EnumerateArray()
            .Select(metric => (Name: metric.GetProperty("name").GetString()!, Value: metric.GetProperty("value").GetDouble()))
            .Where(metric => metric.Name.EndsWith("Duration", StringComparison.Ordinal))
            .ToDictionary(metric => metric.Name, metric => metric.Value);
    }

    private static async Task<Dictionary<string, double>> CpuSecondsAsync(ICDPSession session)
    {
        var answer = await session.SendAsync("SystemInfo.getProcessInfo") ?? throw new InvalidOperationException("Chromium does not say what its processes use.");
        return answer.GetProperty("processInfo").EnumerateArray()
            .GroupBy(process => process.GetProperty("type").GetString()!, process => process.GetProperty("cpuTime").GetDouble())
            .ToDictionary(kind => kind.Key, kind => kind.Sum());
    }
}
