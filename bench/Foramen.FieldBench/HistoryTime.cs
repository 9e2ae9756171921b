using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Foramen.Journal.Bodies;
using Foramen.Journal.Exchange;
using Microsoft.Playwright;

namespace Foramen.FieldBench;

/// <summary>
/// The app with a thousand judged sheets in its journal: starting again, the ledger, the first look at what they teach, and one judgement more, from the touch to the
/// re-shoot card drawn; as the page itself sees it.
/// </summary>
/// <param name="Import">From the file chosen to the sentence that says it is stored, ms.</param>
/// <param name="Start">From the start of navigation to the ledger's first rows, ms.</param>
/// <param name="SoonLook">From the touch to the beliefs drawn, at once after a start, ms.</param>
/// <param name="FirstLook">The same for the first look, three seconds after a start, ms.</param>
/// <param name="LaterLook">The same again.</param>
/// <param name="FirstJudgement">From the touch that keeps a judgement to the card drawn, where nothing was looked at before, ms.</param>
/// <param name="Judgement">The same for a further judgement, median.</param>
/// <param name="Longest">The longest time that the page stood still meanwhile, ms.</param>
internal sealed record HistoryTime(double Import, double Start, double SoonLook, double FirstLook, double LaterLook, double FirstJudgement, double Judgement, double Longest)
{
    public const int Sheets = 1000;
    private const int Rounds = 9;

    // Touched, and awaited.
    private static readonly string[] Beliefs = ["#learned", ".belief .dot"];
    private static readonly string[] Card = [".thumb .main", "#sheets-left"];

    /// <summary>From a click to two frames after a thing has appeared (or come anew) on the page.</summary>
    private const string Touch =
        """
        ([touched, awaited]) => new Promise(resolve => {
          const start = performance.now();
          const observer = new MutationObserver(look);
          function look() {
            if (document.querySelector(awaited)) {
              observer.disconnect();
              requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now() - start)));
            }
          }
          observer.observe(document.body, { childList: true, subtree: true });
          document.querySelector(touched).click();
        })
        """;

    private const string WatchStart =
        """
        window.stood = 0;
        new PerformanceObserver(list => { for (const task of list.getEntries()) { window.stood = Math.max(window.stood, task.duration); } }).observe({ type: 'longtask', buffered: true });
        new MutationObserver((_, observer) => {
          if (document.querySelector('.cards .sheet-card')) {
            observer.disconnect();
            requestAnimationFrame(() => requestAnimationFrame(() => { window.drawn = performance.now(); }));
          }
        }).observe(document, { childList: true, subtree: true });
        """;

    public static async Task<HistoryTime> MeasureAsync(IBrowser browser, string address)
    {
        // Without the last judgement: that is made in the app.
        var entries = LongHistory.Of(Sheets);
        var last = (PrintJudged)entries[^1].ReadBody().Body!;
        await using var context = await BenchBrowser.PhoneAsync(browser);
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        await page.AddInitScriptAsync(WatchStart);
        await page.GotoAsync(address + "/ledger");
        await page.Locator("#import").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var begun = DateTimeOffset.UtcNow;
        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "bench.foramen.jsonl", MimeType = JournalFile.MediaType, Buffer = JournalFile.Write(entries.Take(entries.Count - 1)) });
        await page.Locator(".sheet-card").First.WaitForAsync();
        var import = (DateTimeOffset.UtcNow - begun).TotalMilliseconds;

        async Task<double> StartAsync(string path)
        {
            await page.GotoAsync(address + path);
            await page.WaitForFunctionAsync("() => window.drawn !== undefined");
            return await page.EvaluateAsync<double>("() => window.drawn");
        }

        async Task<double> JudgeAsync() => await page.EvaluateAsync<double>(Touch, Card);
        async Task AgainAsync()
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Judge it again" }).ClickAsync();
            await page.Locator("#note").WaitForAsync();
        }

        var starts = new List<double>();
        for (var round = 0; round < 5; round++)
        {
            starts.Add(await StartAsync("/ledger"));
        }

        var soonLook = await page.EvaluateAsync<double>(Touch, Beliefs);
        await StartAsync("/ledger");
        // Whoever starts the app looks at it first; meanwhile it prepares what the ledger teaches.
        await Task.Delay(TimeSpan.FromSeconds(3));
        var firstLook = await page.EvaluateAsync<double>(Touch, Beliefs);
        await page.GoBackAsync();
        await page.Locator("#learned").WaitForAsync();
        var laterLook = await page.EvaluateAsync<double>(Touch, Beliefs);

        await page.GotoAsync(string.Create(CultureInfo.InvariantCulture, $"{address}/sheet/{last.Sheet}/judge"));
        await page.Locator("#keeper-0").CheckAsync(new() { Force = true });
        await page.EvaluateAsync("() => { window.stood = 0; }");
        var firstJudgement = await JudgeAsync();
        var judgements = new List<double>();
        for (var round = 0; round < Rounds; round++)
        {
            await AgainAsync();
            judgements.Add(await JudgeAsync());
        }

        var longest = await page.EvaluateAsync<double>("() => window.stood");
        return new HistoryTime(import, Median(starts), soonLook, firstLook, laterLook, firstJudgement, Median(judgements), longest);
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);

    /// <summary>The result as a page.</summary>
    public string Write(string browser, string load)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Line($"# A thousand sheets in the app: measured");
        Line($"");
        Line($"{DateTime.UtcNow:yyyy-MM-dd}, {RuntimeInformation.OSDescription}, {Environment.ProcessorCount} threads, headless Chromium {browser}, `bench/field history`, load average at its end {load}.");
        Line($"{Sheets} sheets as bench/LongHistory.cs makes them up, about 15,000 entries, taken in as a file. Field runs interpreted (no ahead-of-time compilation).");
        Line($"");
        Line($"| what | measured | should be |");
        Line($"| --- | ---: | ---: |");
        Line($"| one judgement more, from the touch to the re-shoot card drawn, storing included; median of {Rounds} | {Judgement:0} ms | < 400 ms |");
        Line($"| the same, at once after a start, while everything is still to be learned | {FirstJudgement:0} ms | |");
        Line($"| the first look at what the ledger taught, three seconds after a start, from the touch to the beliefs drawn | {FirstLook:0} ms | < 400 ms |");
        Line($"| the same at once after a start, while it is still being prepared | {SoonLook:0} ms | |");
        Line($"| the same again | {LaterLook:0} ms | |");
        Line($"| a start on the ledger, from navigation to its first rows; median of 5 | {Start:0} ms | |");
        Line($"| the longest that the page stood still while judging | {Longest:0} ms | |");
        Line($"| the file taken in | {Import:0} ms | |");
        var marks = new MarkRows($"{Environment.ProcessorCount} threads, headless Chromium {browser}", load);
        marks.Add("learn.browser", $"one judgement more, from the touch to the re-shoot card drawn, median", $"{Judgement:0} ms", $"", $"{Judgement:0} ms");
        marks.Add("learn.browser", $"the first look at what the ledger taught, three seconds after a start", $"{FirstLook:0} ms", $"", $"{FirstLook:0} ms");
        marks.Add("learn.browser", $"the first look at what the ledger taught, at once after a start", $"{SoonLook:0} ms", $"", $"{SoonLook:0} ms");
        return text.Append(marks).ToString();
    }
}
