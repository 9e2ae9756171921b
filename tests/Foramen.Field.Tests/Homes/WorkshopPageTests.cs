using Bunit;
using Foramen.Field.Components;
using Foramen.Field.Homes;
using Foramen.Field.Settings;
using Foramen.Field.Sheets;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Bodies;
using Foramen.Journal.Listing;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Homes;

public sealed class WorkshopPageTests : IDisposable
{
    private readonly FieldContext context = new();

    public void Dispose() => context.Dispose();

    [Fact]
    public async Task Who_scanned_the_square_gives_a_name_and_is_in()
    {
        (context.Home.Access, context.Home.Workshop) = ("needed", "By the canal");
        await context.LoadedSheetAsync();
        await context.Tie.StartAsync();
        context.Services.GetRequiredService<NavigationManager>().NavigateTo("workshop#join=GOODCODE");
        var page = context.Render<WorkshopPage>();
        Assert.Contains(Words.Workshops.JoinCaution, page.Markup, StringComparison.Ordinal);
        Assert.Equal("GOODCODE", page.Find("#join-code").GetAttribute("value"));
        Press(page, Words.Workshops.Join);
        Assert.Contains(Words.Workshops.YourNameMissing, page.Markup, StringComparison.Ordinal);
        Assert.Empty(context.Home.Entries);
        page.Find("#join-name").Input("Ada");
        Press(page, Words.Workshops.Join);
        page.WaitForAssertion(() => Assert.Equal("By the canal", page.Find("h1").TextContent));
        Assert.Equal(3, context.Home.Entries.Count);
        Assert.False(context.Tie.Leads);
        Assert.Empty(page.FindAll("[role=alert]"));
        Press(page, Words.Workshops.Leave);
        page.WaitForAssertion(() => Assert.Contains(Words.Workshops.Left, page.Markup, StringComparison.Ordinal));
        Assert.Equal("api/devices/3", Assert.Single(context.Home.Deleted));
        Assert.NotEmpty(context.Session.Ledger.Sheets.All);
    }

    [Fact]
    public async Task A_leader_opens_a_workshop_shows_the_square_sees_who_joins_and_removes_and_ends()
    {
        await context.Tie.StartAsync();
        var page = context.Render<WorkshopPage>();
        Press(page, Words.Workshops.Open);
        Assert.Contains(Words.Workshops.NameMissing, page.Markup, StringComparison.Ordinal);
        page.Find("#workshop-name").Input("By the canal");
        Press(page, Words.Workshops.Open);
        page.WaitForAssertion(() => Assert.Equal("JOIN123456", page.Find(".code").TextContent));
        Assert.Contains("Nobody has joined yet", page.Markup, StringComparison.Ordinal);
        context.Home.Workshops[0] = """{"id":1,"name":"By the canal","ended":false,"members":[{"id":7,"name":"Ada","lastMet":"2026-05-03T12:00:00+00:00","revoked":false},{"id":8,"name":"Ben","lastMet":"2026-05-03T12:00:00+00:00","revoked":true}]}""";
        context.Time.Advance(TimeSpan.FromSeconds(6));
        page.WaitForAssertion(() => Assert.Contains("1 person has joined", page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain("Ben", page.Markup, StringComparison.Ordinal);
        page.Find("[aria-label='Remove Ada']").Click();
        page.WaitForAssertion(() => Assert.Equal(["api/devices/7"], context.Home.Deleted));
        Press(page, Words.Workshops.EndThis);
        Assert.Contains(Words.Workshops.EndWhy, page.Markup, StringComparison.Ordinal);
        Press(page, Words.Workshops.End);
        page.WaitForAssertion(() => Assert.Equal(["api/devices/7", "api/workshops/1"], context.Home.Deleted));
    }

    [Fact]
    public async Task Settings_leads_there_and_a_member_is_not_offered_to_add_devices()
    {
        (context.Home.Access, context.Home.Workshop) = ("needed", "By the canal");
        await context.Tie.StartAsync();
        await context.Tie.PairAsync("GOODCODE", "Ada");
        var page = context.Render<SettingsPage>();
        Assert.Contains("In the workshop “By the canal”.", page.Markup, StringComparison.Ordinal);
        Assert.Equal("workshop", page.Find("#home a.btn").GetAttribute("href"));
        Assert.DoesNotContain(Words.Homes.AddDevice, page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain(Words.Homes.Leave, page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_elses_sheet_counts_for_the_bottle_and_is_not_shown_among_ones_own()
    {
        var own = await context.LoadedSheetAsync();
        var bottle = context.Session.NewId();
        var others = context.Session.NewId();
        await context.Session.AppendAsync(new DevelopedIn { Sheet = others, Bottle = bottle, TemperatureCelsius = 20 });
        Assert.Equal([own.Id], LedgerRow.All(context.Session.Ledger).Select(row => row.Sheet));
        Assert.Equal(Words.Sheets.Another, SheetSummary.NameOf(context.Session.Ledger, context.Session.Ledger.Sheets.Find(others)!));
        Assert.Single(context.Session.Ledger.Bottles.Find(bottle)!.Happenings);
        var inHand = context.Render<SheetsPage>().Markup;
        Assert.Contains($"sheet/{own.Id}", inHand, StringComparison.Ordinal);
        Assert.DoesNotContain($"sheet/{others}", inHand, StringComparison.Ordinal);
        // Once it is more than that, it is shown.
        await context.Session.AppendAsync(new SheetStarted { Sheet = others, Name = "Mine after all" });
        Assert.Equal(2, LedgerRow.All(context.Session.Ledger).Count);
    }

    private static void Press(IRenderedComponent<WorkshopPage> page, string label)
        => page.FindAll("button").Single(button => button.TextContent.Trim() == label).Click();
}
