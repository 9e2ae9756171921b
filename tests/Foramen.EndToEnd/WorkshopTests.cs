using Foramen.EndToEnd.Stage;
using Foramen.Home.Tests.Faults;
using Foramen.Journal.Bodies;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>Three browsers and Home, on both databases: a leader opens a workshop, two people join by its square, each sees what is theirs; then one leaves and one is removed.</summary>
public sealed class WorkshopTests(FieldStage stage)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task People_join_by_the_square_see_what_is_theirs_leave_and_are_removed(bool postgres)
    {
        var data = Directory.CreateTempSubdirectory("foramen-workshop-").FullName;
        await using var server = postgres ? await PostgresServer.StartAsync() : null;
        using var home = await HomeProcess.StartAsync(
            null, data, ["--address", "https://home.example/", .. server is null ? Array.Empty<string>() : ["--postgres", await server.NewDatabaseAsync()]]);
        await using var leaderContext = await stage.DesktopAsync(home.Address);
        await using var adaContext = await ElsewhereAsync(home);
        await using var benContext = await ElsewhereAsync(home);
        var leader = await leaderContext.NewPageAsync();

        // The leader's box of paper, and the workshop.
        await ImportAsync(leader, "The leader's own sheet", 1);
        await leader.OpenAsync("/workshop");
        Assert.Empty(await Axe.FindAsync(leader, "a new workshop"));
        await leader.GetByLabel("Name of the workshop").FillAsync("By the canal");
        await leader.GetByRole(AriaRole.Button, new() { Name = "Open the workshop" }).ClickAsync();
        var code = await leader.Locator(".code").TextContentAsync();
        await leader.GetByText("https://home.example/workshop", new() { Exact = true }).WaitForAsync();
        Assert.Empty(await Axe.FindAsync(leader, "the workshop's square"));

        // Two people come.
        var ada = await JoinAsync(adaContext, code!, "Ada");
        Assert.Empty(await Axe.FindAsync(ada, "in the workshop"));
        var ben = await JoinAsync(benContext, code!, "Ben");
        await leader.GetByText("2 people have joined").WaitForAsync();
        Assert.Empty(await Axe.FindAsync(leader, "a workshop with people"));

        // The box is on Ada's bench, the leader's sheet nowhere with her.
        await ada.OpenAsync("/bench");
        await ada.Locator("a.gear[href^='bench/paper/']").First.WaitForAsync();
        Assert.DoesNotContain(await StoredJournal.ReadAsync(ada), entry => entry.ReadBody().Body is SheetStarted);

        await ImportAsync(ada, "Ada's sheet", 2);
        await leader.MeetHomeAsync();
        await ben.MeetHomeAsync();
        await leader.OpenAsync("/ledger");
        await leader.GetByRole(AriaRole.Link).Filter(new() { HasText = "Ada's sheet" }).First.WaitForAsync();
        Assert.DoesNotContain(await StoredJournal.ReadAsync(ben), entry => entry.ReadBody().Body is SheetBody);
        Assert.Contains(await StoredJournal.ReadAsync(ben), entry => entry.ReadBody().Body is PaperDefined);

        // Ada leaves, Ben is removed.
        await ada.OpenAsync("/workshop");
        await ada.GetByRole(AriaRole.Button, new() { Name = "Leave the workshop" }).ClickAsync();
        await ada.GetByText("You have left.").WaitForAsync();
        await leader.OpenAsync("/workshop");
        await leader.GetByRole(AriaRole.Button, new() { Name = "Remove Ben" }).ClickAsync();
        await leader.GetByText("Nobody has joined yet").WaitForAsync();
        await ben.OpenAsync("/workshop");
        await ben.GetByLabel("Your name").WaitForAsync();
        await ada.OpenAsync("/ledger");
        await ada.GetByRole(AriaRole.Link).Filter(new() { HasText = "Ada's sheet" }).First.WaitForAsync();
        Directory.Delete(data, recursive: true);
    }

    // As from another machine, through a proxy on this one.
    private async Task<IBrowserContext> ElsewhereAsync(HomeProcess home)
    {
        var context = await stage.PhoneAsync(home.Address);
        await context.SetExtraHTTPHeadersAsync(new Dictionary<string, string> { ["X-Forwarded-For"] = "203.0.113.7" });
        return context;
    }

    private static async Task<IPage> JoinAsync(IBrowserContext context, string code, string name)
    {
        var page = await context.NewPageAsync();
        await page.OpenAsync($"/workshop#join={code}");
        await page.GetByLabel("Your name").FillAsync(name);
        Assert.Empty(await Axe.FindAsync(page, "joining"));
        await page.PressAsync("Join the workshop");
        await page.GetByRole(AriaRole.Heading, new() { Name = "By the canal", Level = 1 }).WaitForAsync();
        await page.GetByText("Everything is at home.").WaitForAsync();
        Assert.Equal(0, await page.GetByRole(AriaRole.Alert).Filter(new() { Visible = true }).CountAsync());
        return page;
    }

    private static async Task ImportAsync(IPage page, string sheet, byte person)
    {
        await page.OpenAsync("/ledger");
        await page.Locator("#import").SetInputFilesAsync(
            new FilePayload { Name = "plan.jsonl", MimeType = "application/jsonl", Buffer = new PlannedSheetFile(person).With(sheet, exposureSeconds: 2).Write() });
        // Only then: an empty journal is at home too.
        await page.GetByRole(AriaRole.Link).Filter(new() { HasText = sheet }).First.WaitForAsync();
        await page.GetByText("Everything is at home.").WaitForAsync();
    }
}
