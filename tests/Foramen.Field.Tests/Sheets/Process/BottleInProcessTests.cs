using Bunit;
using Foramen.Field.Bench.Bottles;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Process;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Process;

public sealed class BottleInProcessTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task The_bottle_is_chosen_gives_its_time_and_keeps_what_went_through_it()
    {
        var day = await BottleDay.BeginAsync(field);
        var sheet = await day.SheetAsync();
        var page = Render(sheet);
        Assert.Equal(day.Bottle.ToString(), page.Find("#bottle option[selected]").GetAttribute("value"));
        Assert.Contains("100 %", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Gloves on", page.Markup, StringComparison.Ordinal);
        await Press(page);
        field.Time.Advance(TimeSpan.FromSeconds(75));
        await Press(page);
        var said = sheet.Sheet!.Developed!.Body;
        Assert.Equal((day.Bottle, 20.0, 75.0), (said.Bottle, said.TemperatureCelsius, said.DevelopedSeconds!.Value));
        Assert.Equal(1, day.Account.Now.Sheets);
        Assert.Equal(298.5, day.Account.Now.Volume.Millilitres, 1e-9);
    }

    // Factor 7.5: a fresh bottle shows its first tone after 10 s, so one that takes 16 s wants 120 s and has 75/120 of its strength.
    [Fact]
    public async Task The_first_tone_corrects_the_time()
    {
        var day = await BottleDay.BeginAsync(field);
        var sheet = await day.SheetAsync();
        var page = Render(sheet);
        await Press(page);
        field.Time.Advance(TimeSpan.FromSeconds(16));
        await page.Find("#first-tone").ClickAsync(new());
        Assert.Equal(16, sheet.Sheet!.Developed!.Body.AppearedAfterSeconds);
        await page.Find("#by-first-tone").ClickAsync(new());
        Assert.Equal(120, sheet.Sheet.Bath!.Steps[0].Body.PlannedSeconds);
        page.WaitForAssertion(() => Assert.Equal("1:44", page.Find("[role=timer]").TextContent));
        field.Time.Advance(TimeSpan.FromSeconds(104));
        await new ProcessState(sheet).GoOnAsync();
        Assert.Equal((16.0, 120.0), (sheet.Sheet.Developed!.Body.AppearedAfterSeconds!.Value, sheet.Sheet.Developed.Body.DevelopedSeconds!.Value));
        // The bottle is as strong as it showed, less what the sheet took.
        Assert.InRange(day.Account.Now.Activity.Middle, 0.61, 75.0 / 120);
    }

    [Fact]
    public async Task The_topping_up_is_asked_at_the_end_and_written_down()
    {
        var day = await BottleDay.BeginAsync(field);
        var (state, _) = await day.ProcessAsync();
        var sheet = SheetOf(field.Session.Ledger.Sheets.All.Last());
        var page = Render(sheet);
        // A tenth of 300 ml; 1.5 ml were lost.
        Assert.Equal(("30", "28.5"), (page.Find("#fresh").GetAttribute("value"), page.Find("#poured").GetAttribute("value")));
        page.Find("#poured").Input("0");
        await page.Find("#topped-up").ClickAsync(new());
        Assert.Contains("pour 28.5 ml more away", page.Find("#poured-message").TextContent, StringComparison.Ordinal);
        page.Find("#fresh").Input("−30");
        await page.Find("#topped-up").ClickAsync(new());
        Assert.Contains("between 0", page.Find("#fresh-message").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(day.Account.Bottle.Happenings, one => one.Said is BottleToppedUp);

        page.Find("#lost").Input("4");
        page.Find("#fresh").Input("30");
        page.Find("#poured").Input("26");
        page.Find("#colour-1").Change(true);
        await page.Find("#topped-up").ClickAsync(new());
        var bottle = day.Account.Now;
        Assert.Equal((300.0, 30.0, 4.0, 26.0), (bottle.Volume.Millilitres, bottle.Added.Millilitres, bottle.Lost.Millilitres, bottle.Poured.Millilitres));
        Assert.Equal(DeveloperColour.Straw, day.Account.Colour);
        Assert.Null(state.Developing!.TopUpDue);
        Assert.Empty(page.FindAll("#topped-up"));
        Assert.Contains("Topped up", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_sheet_at_a_time_in_a_bottle_and_two_in_different_baths()
    {
        var day = await BottleDay.BeginAsync(field);
        var first = new ProcessState(await day.SheetAsync());
        await first.StartAsync();
        var second = await day.SheetAsync();
        var page = Render(second);
        Assert.Contains("One sheet at a time", page.Markup, StringComparison.Ordinal);
        Assert.True(page.Find(".thumb button").HasAttribute("disabled"));
        Assert.False(await new ProcessState(second).StartAsync());

        field.Time.Advance(TimeSpan.FromSeconds(75));
        await first.GoOnAsync();
        await page.InvokeAsync(() => { });
        Assert.True(await new ProcessState(second).StartAsync());
        page = Render(second);
        field.Time.Advance(TimeSpan.FromSeconds(5.01));
        field.Services.GetRequiredService<NavigationManager>().NavigateTo($"sheet/{second.Id}/process");
        Assert.Contains("0:15", Assert.Single(field.Render<RunningStrip>().FindAll(".strip li")).TextContent, StringComparison.Ordinal);
        page.WaitForAssertion(() => Assert.NotEqual("0:15", page.Find("[role=timer]").TextContent));
    }

    [Fact]
    public async Task A_clock_set_back_is_said_where_the_bottles_time_is_given()
    {
        var day = await BottleDay.BeginAsync(field);
        await day.ProcessAsync();
        Assert.DoesNotContain("The clock", Render(await day.SheetAsync()).Markup, StringComparison.Ordinal);
        field.Time.AdjustTime(field.Time.GetUtcNow().AddHours(-1));
        Assert.Contains("before the last thing written down of this bottle", Cautions(), StringComparison.Ordinal);
        await day.ProcessAsync();
        Assert.Contains("went back by", Cautions(), StringComparison.Ordinal);
        Assert.Contains("go by the first tone", Cautions(), StringComparison.Ordinal);

        string Cautions() => string.Join(' ', field.Render<BottlePage>(p => p.Add(page => page.IdText, day.Bottle.ToString()))
            .FindAll(".notice.caution").Select(each => each.TextContent))
            + string.Join(' ', Render(day.SheetAsync().GetAwaiter().GetResult()).FindAll(".notice.caution").Select(each => each.TextContent));
    }

    [Fact]
    public async Task A_fixer_counts_its_sheets()
    {
        var day = await BottleDay.BeginAsync(field);
        var fixer = field.Session.NewId();
        await field.Session.AppendAsync(new BottleMixed { Bottle = fixer, Contents = BottleContents.Fixer, Name = "fixer", VolumeMillilitres = 500 });
        var (state, _) = await day.ProcessAsync();
        Assert.Equal(1, state.Fixer!.Now.Sheets);
        Assert.Equal(fixer, state.Fixer.Bottle.Id);
    }

    [Fact]
    public async Task Without_a_bottle_all_is_as_before()
    {
        var day = await BottleDay.BeginAsync(field);
        var sheet = await day.SheetAsync();
        var page = Render(sheet);
        Assert.Empty(page.FindAll("#twenty"));
        await page.Find("#bottle").ChangeAsync(new() { Value = "" });
        page.WaitForElement("#twenty");
        await Press(page);
        Assert.Null(sheet.Sheet!.Bath!.Started!.Body.Bottle);
        Assert.Empty(page.FindAll("#first-tone"));
    }

    private static Task Press(IRenderedComponent<SheetPage> page) => page.Find(".thumb button").ClickAsync(new());

    private SheetState SheetOf(Sheet sheet)
    {
        var state = new SheetState(field.Session, new Clock(field.Time, field.Platform));
        state.Show(sheet.Id);
        return state;
    }

    private IRenderedComponent<SheetPage> Render(SheetState sheet)
        => field.Render<SheetPage>(p => p.Add(page => page.SheetText, sheet.Id.ToString()).Add(page => page.StepText, "process"));
}
