using Bunit;
using Foramen.Field.Device;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Flash;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Field.Tests.Sheets.Flash;

public sealed class FlashStepTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_flash_counts_down_by_the_clock_and_its_end_is_signalled()
    {
        var sheet = await field.PlannedSheetAsync(120, flashSeconds: 20);
        var page = Render(sheet);
        Assert.Contains("Never point the hole at the sun", page.Markup, StringComparison.Ordinal);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal("0:20", page.Find("[role=timer]").TextContent);
        Assert.Equal((Signal.End, TimeSpan.FromSeconds(20)), Assert.Single(field.Signals.Planned));
        Assert.Equal(WakeState.Held, field.Wake.State);

        field.Time.Advance(TimeSpan.FromSeconds(8.01));
        page.WaitForAssertion(() => Assert.Equal("0:12", page.Find("[role=timer]").TextContent));
        field.Time.Advance(TimeSpan.FromSeconds(15));
        page.WaitForAssertion(() => Assert.Equal("+0:03", page.Find("[role=timer]").TextContent));
        Assert.Contains("Cover the hole now", page.Find(".thumb").TextContent, StringComparison.Ordinal);
        Assert.Equal(1, field.Signals.Vibrations);

        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(23.01, new FlashState(sheet).GivenSeconds!.Value, 0.01);
        Assert.Equal(SheetStep.Expose, sheet.Sheet!.Step);
        Assert.Equal(WakeState.Off, field.Wake.State);
    }

    [Fact]
    public async Task The_numerals_change_on_the_second_of_what_is_left()
    {
        var page = Render(await field.PlannedSheetAsync(120, flashSeconds: 20.4));
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal("0:21", page.Find("[role=timer]").TextContent);
        field.Time.Advance(TimeSpan.FromSeconds(0.41));
        page.WaitForAssertion(() => Assert.Equal("0:20", page.Find("[role=timer]").TextContent));
    }

    [Fact]
    public async Task After_everything_was_closed_the_flash_stands_where_it_truly_is()
    {
        var sheet = await field.PlannedSheetAsync(120, flashSeconds: 30);
        await new FlashState(sheet).StartAsync(FlashTarget.Card);
        field.Time.Advance(TimeSpan.FromSeconds(47));

        using var after = new FieldContext(field.Store);
        after.Time.SetUtcNow(field.Time.GetUtcNow());
        await after.Session.OpenAsync();
        var same = new SheetState(after.Session, new Clock(after.Time, after.Platform));
        same.Show(sheet.Id);
        var now = new FlashState(same).TimeAt(same.Clock.Now)!;
        Assert.Equal(17, now.OverSeconds, 0.01);

        // Away, but the hole was covered on time: that is what the journal then says.
        Assert.True(now.IsLongOver);
        Assert.True(await new FlashState(same).FinishAsync(onTime: true));
        Assert.Equal(30, new FlashState(same).GivenSeconds);
        Assert.Equal("Card", same.Sheet!.Flashes[0].Started!.Body.PointedAt);
    }

    [Fact]
    public async Task A_flash_that_went_on_too_long_is_said_and_leads_to_a_plan_for_it()
    {
        var (sheet, page) = await GivenAsync(20, 40);
        Assert.Equal(1, new FlashState(sheet).OffPlanStops!.Value, 0.01);
        Assert.Null(new FlashState(sheet).RestSeconds);
        Assert.Contains("got 40 s of flash, not 20 s (1.0 stops more)", page.Markup, StringComparison.Ordinal);
        Assert.EndsWith("/plan", page.Find(".notice a.btn").GetAttribute("href"), StringComparison.Ordinal);
        Assert.DoesNotContain("Give the rest", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_missing_to_a_flash_can_be_given()
    {
        var (sheet, page) = await GivenAsync(20, 8);
        Assert.Contains("(1.3 stops less)", page.Markup, StringComparison.Ordinal);
        await page.FindAll("button").Single(button => button.TextContent.Contains("Give the rest, 12 s", StringComparison.Ordinal)).ClickAsync(new());
        Assert.Equal("0:12", page.Find("[role=timer]").TextContent);
        field.Time.Advance(TimeSpan.FromSeconds(12));
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(20, new FlashState(sheet).GivenSeconds!.Value, 0.01);
        Assert.Empty(page.FindAll(".notice"));
    }

    [Theory]
    [InlineData(18)]
    [InlineData(22)]
    public async Task A_flash_as_good_as_planned_needs_no_word(double seconds)
    {
        var (sheet, page) = await GivenAsync(20, seconds);
        Assert.Null(new FlashState(sheet).OffPlanStops);
        Assert.Empty(page.FindAll(".notice"));
    }

    private async Task<(SheetState Sheet, IRenderedComponent<SheetPage> Page)> GivenAsync(double planned, double given)
    {
        var sheet = await field.PlannedSheetAsync(120, planned);
        var page = Render(sheet);
        await page.Find(".thumb button").ClickAsync(new());
        field.Time.Advance(TimeSpan.FromSeconds(given));
        await page.Find(".thumb button").ClickAsync(new());
        return (sheet, page);
    }

    [Fact]
    public async Task Without_a_flash_in_the_plan_the_way_goes_on_to_the_exposure()
    {
        var page = Render(await field.PlannedSheetAsync(120));
        Assert.Contains("This plan has no flash", page.Markup, StringComparison.Ordinal);
        Assert.EndsWith("/expose", page.Find(".thumb a").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clock_set_back_is_said_and_plans_no_signal()
    {
        var sheet = await field.PlannedSheetAsync(120, flashSeconds: 30);
        field.Time.Advance(TimeSpan.FromMinutes(10));
        await new FlashState(sheet).StartAsync(FlashTarget.Wall);
        using var after = new FieldContext(field.Store);
        await after.Session.OpenAsync();
        var page = after.Render<SheetPage>(p => p.Add(one => one.SheetText, sheet.Id.ToString()).Add(one => one.StepText, "flash"));
        Assert.Contains("clock of this device was set back", page.Markup, StringComparison.Ordinal);
        Assert.Empty(after.Signals.Planned);
    }

    /// <summary>ISO 2720 with K = 12.5: L = K·2^EV/100 at ISO 100, so 512 cd/m² is EV 12 (worked by hand: 0.125·4096 = 512).</summary>
    [Fact]
    public async Task What_to_point_at_is_told_as_a_meter_shows_it()
    {
        var sheet = await field.LoadedSheetAsync();
        await field.Session.AppendAsync(new PlanMade { Sheet = sheet.Id, ExposureSeconds = 60, FlashSeconds = 5, FlashLuminanceCandelasPerSquareMetre = 512 });
        Assert.Equal(12, new FlashState(sheet).Reading!.Value.AtIso100, 1e-9);
        Assert.Contains("12.0", Render(sheet).Find(".measure").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<SheetPage> Render(SheetState sheet)
        => field.Render<SheetPage>(p => p.Add(page => page.SheetText, sheet.Id.ToString()).Add(page => page.StepText, "flash"));
}
