using Foramen.EndToEnd.Stage;
using Foramen.Home.Tests.Faults;
using Foramen.Journal.Bodies;
using Foramen.Journal.Sync;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>Two browsers and Home, on both databases: a sheet exposed on one out of reach of Home, judged on the other, the same journal everywhere after they met.</summary>
public sealed class MeetingTests(FieldStage stage)
{
    private const string Sheet = "The lift bridge";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_sheet_exposed_on_one_device_is_judged_on_the_other_and_all_hold_the_same(bool postgres)
    {
        var data = Directory.CreateTempSubdirectory("foramen-meeting-").FullName;
        await using var server = postgres ? await PostgresServer.StartAsync() : null;
        using var home = await HomeProcess.StartAsync(null, data, server is null ? [] : ["--postgres", await server.NewDatabaseAsync()]);
        await using var phoneContext = await stage.PhoneAsync(home.Address);
        await using var deskContext = await stage.DesktopAsync(home.Address);
        var phone = await phoneContext.NewPageAsync();
        var desk = await deskContext.NewPageAsync();

        // The phone, out of reach of Home.
        await phone.OpenAsync("/ledger");
        await phone.WaitUntilOfflineReadyAsync();
        // A device that has never met Home does not know of one.
        await phone.GetByText("Last met").WaitForAsync();
        await phoneContext.SetOfflineAsync(true);
        await phone.Locator("#import").SetInputFilesAsync(
            new FilePayload { Name = "plan.jsonl", MimeType = "application/jsonl", Buffer = new PlannedSheetFile().With(Sheet, exposureSeconds: 2).Write() });
        await phone.GetByRole(AriaRole.Link).Filter(new() { HasText = Sheet }).First.ClickAsync();
        await phone.AtStepAsync("Expose");
        await phone.PressAsync("Open the hole");
        await phone.GetByText("left in this light").WaitForAsync();
        await phone.PressAsync("Close the hole now");
        // Said once it is stored; a page that is left earlier has promised nothing.
        await phone.GetByText("Closed", new() { Exact = true }).WaitForAsync();
        await phone.OpenAsync("/ledger");
        await phone.GetByText("1 sheet not yet at home.").WaitForAsync();

        // Back in reach: by itself.
        await phoneContext.SetOfflineAsync(false);
        await phone.GetByText("Everything is at home.").WaitForAsync();

        // The desk at home.
        await desk.OpenAsync("/ledger");
        await desk.GetByRole(AriaRole.Link).Filter(new() { HasText = Sheet }).First.ClickAsync();
        await desk.Locator(".rail").WaitForAsync();
        await desk.GotoStepAsync("Judge");
        await desk.GetByLabel("Note").FillAsync("Sharp enough.");
        await desk.GetByLabel("Keeper", new() { Exact = true }).CheckAsync();
        await desk.PressAsync("Judge it so");
        await desk.GetByText("Next time, in the same light").WaitForAsync();
        await desk.OpenAsync("/ledger");
        await desk.GetByText("Everything is at home.").WaitForAsync();

        // The phone again: what the desk judged is on its ledger.
        await phone.MeetHomeAsync();
        await phone.OpenAsync("/ledger");
        await phone.GetByRole(AriaRole.Link).Filter(new() { HasText = Sheet }).GetByText("Keeper", new() { Exact = true }).WaitForAsync();

        var onPhone = Hashes((await StoredJournal.ReadAsync(phone)).Select(entry => entry.Hash));
        using var client = new HttpClient { BaseAddress = new Uri(home.Address) };
        var atHome = SyncBatch.Read(await client.GetByteArrayAsync("/api/entries?epoch=&after=", TestContext.Current.CancellationToken)).Lines;
        Assert.Equal(onPhone, Hashes((await StoredJournal.ReadAsync(desk)).Select(entry => entry.Hash)));
        Assert.Equal(onPhone, Hashes(atHome.Select(line => line.Entry.Hash)));
        Assert.Contains(atHome, line => line.Entry.ReadBody().Body is HoleClosed);
        Assert.Contains(atHome, line => line.Entry.ReadBody().Body is PrintJudged { Keeper: true });
        Directory.Delete(data, recursive: true);
    }

    private static string[] Hashes(IEnumerable<string> hashes) => [.. hashes.Order(StringComparer.Ordinal)];
}
