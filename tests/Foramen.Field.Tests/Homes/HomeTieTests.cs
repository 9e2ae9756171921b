using Bunit;
using Foramen.Field.Homes;
using Foramen.Field.Settings;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Bodies;
using Foramen.Journal.Sync;

namespace Foramen.Field.Tests.Homes;

public sealed class HomeTieTests : IDisposable
{
    private readonly FieldContext context = new();

    public void Dispose() => context.Dispose();

    [Fact]
    public async Task A_sheet_goes_home_by_itself_soon_after_it_was_written_and_the_words_say_so()
    {
        await context.Tie.StartAsync();
        Assert.Equal(HomeAccess.Own, context.Tie.Access);
        await context.LoadedSheetAsync();
        Assert.Equal((3, 1), context.Tie.NotAtHome());
        Assert.Equal("1 sheet not yet at home.", Words.Homes.NotAtHome(3, 1));
        context.Time.Advance(TimeSpan.FromSeconds(3));
        Assert.Equal((0, 0), context.Tie.NotAtHome());
        Assert.Equal(3, context.Home.Entries.Count);
        Assert.NotNull(context.Tie.LastMet);
    }

    [Fact]
    public async Task What_another_device_wrote_comes_here_and_is_not_sent_back()
    {
        using var other = new FieldContext(home: context.Home);
        await other.LoadedSheetAsync();
        await other.Tie.StartAsync();
        await context.Tie.StartAsync();
        Assert.Equal(other.Session.Ledger.Sheets.All.Single().Id, context.Session.Ledger.Sheets.All.Single().Id);
        Assert.Equal((0, 0), context.Tie.NotAtHome());
        Assert.All(context.Store.Lines, line => Assert.NotEmpty(line.Origin));
    }

    [Fact]
    public async Task Where_nobody_answers_nothing_is_lost_and_it_goes_on_by_itself()
    {
        await context.Tie.StartAsync();
        context.Home.Always = new HomeAnswer(0, "", "");
        await context.LoadedSheetAsync();
        context.Time.Advance(TimeSpan.FromSeconds(3));
        Assert.Equal(HomeRefusal.Away, context.Tie.Trouble!.Why);
        Assert.Equal((3, 1), context.Tie.NotAtHome());
        context.Home.Always = null;
        context.Time.Advance(TimeSpan.FromSeconds(31));
        Assert.Null(context.Tie.Trouble);
        Assert.Equal((0, 0), context.Tie.NotAtHome());
    }

    [Fact]
    public async Task A_host_of_files_is_no_Home_and_is_not_asked_for_more()
    {
        context.Home.Always = new HomeAnswer(200, "text/html", "<!DOCTYPE html>");
        await context.Tie.StartAsync();
        Assert.Equal(HomeAccess.None, context.Tie.Access);
        Assert.Equal(1, context.Home.Asked);
        Assert.Null(context.Tie.Trouble);
    }

    [Fact]
    public async Task While_the_hole_is_open_nothing_is_asked_and_afterwards_everything_is_sent()
    {
        var sheet = await context.LoadedSheetAsync();
        await context.Tie.StartAsync();
        await context.Session.AppendAsync(new HoleOpened { Sheet = sheet.Id });
        var asked = context.Home.Asked;
        context.Time.Advance(TimeSpan.FromMinutes(5));
        Assert.Equal(asked, context.Home.Asked);
        await context.Session.AppendAsync(new HoleClosed { Sheet = sheet.Id });
        context.Time.Advance(TimeSpan.FromSeconds(3));
        Assert.Equal((0, 0), context.Tie.NotAtHome());
        Assert.Equal(5, context.Home.Entries.Count);
    }

    [Fact]
    public async Task The_mark_outlives_the_page()
    {
        await context.LoadedSheetAsync();
        await context.Tie.StartAsync();
        using var reopened = new FieldContext(context.Store, context.Home);
        context.Home.Always = new HomeAnswer(0, "", "");
        await reopened.Tie.StartAsync();
        Assert.Equal((0, 0), reopened.Tie.NotAtHome());
        Assert.Equal(context.Tie.LastMet, reopened.Tie.LastMet);
    }

    [Fact]
    public async Task A_page_loaded_anew_while_the_hole_is_open_says_what_is_not_at_home()
    {
        await context.Tie.StartAsync();
        var sheet = await context.LoadedSheetAsync();
        await context.Session.AppendAsync(new HoleOpened { Sheet = sheet.Id });
        using var reloaded = new FieldContext(context.Store, context.Home);
        await reloaded.Session.OpenAsync();
        var page = reloaded.Render<HomeState>();
        Assert.Empty(page.Markup.Trim());
        await reloaded.Tie.StartAsync();
        page.WaitForAssertion(() => Assert.Contains("1 sheet not yet at home.", page.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Contains(Words.Homes.Waits, page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_the_store_opens_only_at_the_second_try_it_begins_then()
    {
        context.Store.Refuse = StoreRefusal.Unavailable;
        await context.Tie.StartAsync();
        Assert.Equal(0, context.Home.Asked);
        context.Store.Refuse = null;
        await context.Session.ReopenAsync();
        Assert.Equal(HomeAccess.Own, context.Tie.Access);
        var asked = context.Home.Asked;
        await context.LoadedSheetAsync();
        context.Time.Advance(TimeSpan.FromSeconds(3));
        Assert.True(context.Home.Asked > asked);
        Assert.Equal((0, 0), context.Tie.NotAtHome());
    }

    [Fact]
    public async Task A_device_is_paired_by_a_code_and_the_messages_stand_beside_the_fields()
    {
        context.Home.Access = "needed";
        await context.LoadedSheetAsync();
        await context.Tie.StartAsync();
        Assert.Empty(context.Home.Entries);
        var page = context.Render<SettingsPage>();
        page.Find("#home button").Click();
        Assert.Contains(Words.Homes.CodeMissing, page.Markup, StringComparison.Ordinal);
        page.Find("#home-code").Input("wrong");
        page.Find("#home-name").Input("my phone");
        page.Find("#home button").Click();
        Assert.Contains("This code is not good.", page.Find("#home [role=alert]").TextContent, StringComparison.Ordinal);
        page.Find("#home-code").Input("GOODCODE");
        page.Find("#home button").Click();
        page.WaitForAssertion(() => Assert.Equal(HomeAccess.Paired, context.Tie.Access));
        Assert.Equal(3, context.Home.Entries.Count);
        Assert.Contains("Everything is at home.", page.Find("#home [role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task At_home_the_paired_devices_are_shown_with_when_they_were_last_there()
    {
        await context.Tie.StartAsync();
        var page = context.Render<SettingsPage>();
        page.WaitForAssertion(() => Assert.Contains("tablet: last here at 13:00.", page.Find("#home").TextContent, StringComparison.Ordinal));
        page.FindAll("#home button").Single(button => button.TextContent == Words.Homes.AddDevice).Click();
        page.WaitForAssertion(() => Assert.Equal("ABCDE12345", page.Find("#home .code").TextContent));
        Assert.StartsWith("data:image/svg+xml;base64,", page.Find("#home img").GetAttribute("src"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Older_pictures_are_fetched_too_also_where_home_lacks_newer_ones()
    {
        var sheet = await context.LoadedSheetAsync();
        var hashes = Enumerable.Range(0, 70).Select(i => $"{i:x64}").ToList();
        foreach (var hash in hashes)
        {
            await context.Session.AppendAsync(new PhotographAdded { Sheet = sheet.Id, ContentHash = hash, MediaType = "image/jpeg", WidthPixels = 640, HeightPixels = 512 });
        }

        // The newest thirty are nowhere yet, ten are here, the thirty oldest are at home.
        context.Home.Kept = [.. hashes[30..40]];
        context.Home.Pictures.UnionWith(hashes[..40]);
        await context.Tie.StartAsync();
        for (var i = 0; i < 4; i++)
        {
            await context.Tie.MeetAsync();
        }

        Assert.Equal(hashes[..40], context.Home.Kept.Order(StringComparer.Ordinal));
        // Another device brings the rest to Home.
        context.Home.Pictures.UnionWith(hashes);
        for (var i = 0; i < 6; i++)
        {
            await context.Tie.MeetAsync();
        }

        Assert.Equal(hashes, context.Home.Kept.Order(StringComparer.Ordinal));
    }
}
