using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>A Chromium that this test started itself on a profile of its own, so that it, and only it, can be killed as a phone's browser is.</summary>
internal sealed partial class OwnBrowser : IAsyncDisposable
{
    private readonly Process process;
    private readonly IBrowser browser;

    private OwnBrowser(Process process, IBrowser browser)
    {
        this.process = process;
        this.browser = browser;
    }

    /// <summary>The one page.</summary>
    public IPage Page => browser.Contexts[0].Pages[0];

    public static async Task<OwnBrowser> StartAsync(IPlaywright playwright, string profile)
    {
        var start = new ProcessStartInfo(Chromium.Path)
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        foreach (var argument in new[] { "--headless", "--remote-debugging-port=0", $"--user-data-dir={profile}", "--window-size=390,844" }
                     .Concat(Chromium.Arguments).Append("about:blank"))
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start)!;
        _ = process.StandardOutput.ReadToEndAsync();
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (await process.StandardError.ReadLineAsync(limit.Token) is { } line)
        {
            if (DevTools().Match(line) is { Success: true } match)
            {
                _ = process.StandardError.ReadToEndAsync(CancellationToken.None);
                return new OwnBrowser(process, await playwright.Chromium.ConnectOverCDPAsync(match.Value));
            }
        }

        throw new InvalidOperationException("Chromium ended before it could be reached.");
    }

    /// <summary>SIGKILL, and the wait for its end: an orphan would keep the profile locked.</summary>
    public async Task KillAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        if (!process.HasExited)
        {
            await KillAsync();
        }

        process.Dispose();
    }

    [GeneratedRegex("ws://[^\\s]+")]
    private static partial Regex DevTools();
}
