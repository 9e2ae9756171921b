using Foramen.Journal.Entries;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>
/// A browser on a profile of its own that is killed again and again, and what it has acknowledged so far. No kill drops the operating system's
/// cache: this shows survival of a crash of the browser, not of a power cut.
/// </summary>
internal sealed class KilledPhone(FieldStage stage) : IAsyncDisposable
{
    private readonly string profile = Directory.CreateTempSubdirectory("foramen-kill-").FullName;
    private readonly List<Entry> known = [];
    private readonly List<(string[] Kinds, DateTimeOffset From, DateTimeOffset To)> acknowledged = [];
    private OwnBrowser? browser;

    /// <summary>How often it was killed.</summary>
    public int Kills { get; private set; }

    /// <summary>What was acknowledged and not found again, or found and never touched; a sentence each.</summary>
    public List<string> Lost { get; } = [];

    public IPage Page => browser!.Page;

    /// <summary>Starts the browser at an address of the app.</summary>
    public async Task StartAsync(string address)
    {
        browser = await OwnBrowser.StartAsync(stage.Playwright, profile);
        Page.SetDefaultTimeout(60_000);
        await Page.OpenAsync(stage.Home.Address + address);
    }

    /// <summary>Takes a journal file in, by the app's own import.</summary>
    public async Task TakeInAsync(byte[] file)
    {
        await Page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "sheets.jsonl", MimeType = "application/jsonl", Buffer = file });
        await Page.GetByText("entries taken in").WaitForAsync();
        known.AddRange(await StoredJournal.ReadAsync(Page));
    }

    /// <summary>Touches something, waits until the page shows that it is done, and remembers what must have been written for it.</summary>
    public async Task TouchAsync(Func<Task> touch, ILocator shows, params string[] kinds)
    {
        var from = DateTimeOffset.UtcNow;
        await touch();
        await shows.WaitForAsync();
        acknowledged.Add((kinds, from, DateTimeOffset.UtcNow));
    }

    /// <summary>Kills the browser at once, starts it again on the same profile, looks for everything acknowledged, and goes back to the sheet by its card.</summary>
    public async Task KillAsync(string sheet, string place = "/sheet")
    {
        await browser!.KillAsync();
        await browser.DisposeAsync();
        Kills++;
        await StartAsync(place);
        await LookAsync();
        await Page.GetByRole(AriaRole.Link).Filter(new() { HasText = sheet }).First.ClickAsync();
        await Page.Locator(".rail").WaitForAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        Directory.Delete(profile, recursive: true);
    }

    private async Task LookAsync()
    {
        var found = await StoredJournal.ReadAsync(Page);
        foreach (var entry in known.Where(entry => !found.Contains(entry)))
        {
            Lost.Add($"Kill {Kills}: {entry.Kind} of {entry.At:O} is gone.");
        }

        var fresh = new Queue<Entry>(found.Except(known));
        foreach (var (kinds, from, to) in acknowledged)
        {
            foreach (var kind in kinds)
            {
                if (!fresh.TryDequeue(out var entry) || entry.Kind != kind || entry.At < from.AddMilliseconds(-1) || entry.At > to)
                {
                    Lost.Add($"Kill {Kills}: {kind}, touched between {from:O} and {to:O}, but found {entry?.Kind ?? "nothing"} of {entry?.At:O}.");
                }
            }
        }

        Lost.AddRange(fresh.Select(entry => $"Kill {Kills}: {entry.Kind} was written without a touch."));
        acknowledged.Clear();
        known.Clear();
        known.AddRange(found);
    }
}
