using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>The part of one core that all of Chromium's processes use while a page is shown, against the same browser with an empty page.</summary>
internal static class TallyCost
{
    private static readonly TimeSpan Watched = TimeSpan.FromSeconds(20);

    public static async Task<double> PartOfACoreAsync(IBrowser browser)
    {
        var session = await browser.NewBrowserCDPSessionAsync();
        var (before, from) = (await CpuSecondsAsync(session), DateTimeOffset.UtcNow);
        await Task.Delay(Watched);
        var used = await CpuSecondsAsync(session) - before;
        var part = used / (DateTimeOffset.UtcNow - from).TotalSeconds;
        await session.DetachAsync();
        return part;
    }

    private static async Task<double> CpuSecondsAsync(ICDPSession session)
    {
        var answer = await session.SendAsync("SystemInfo.getProcessInfo") ?? throw new InvalidOperationException("Chromium does not say what its processes use.");
        return answer.GetProperty("processInfo").EnumerateArray().Sum(process => process.GetProperty("cpuTime").GetDouble());
    }
}
