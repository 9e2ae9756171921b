using Bunit;
using Foramen.Field.Components;
using Foramen.Field.Device;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Tests.TestKit;

namespace Foramen.Field.Tests.Sheets.Expose;

public sealed class ExposeStepTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Opening_counts_down_and_plans_the_end_signal()
    {
        var page = await ShowAsync(120);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal("2:00", page.Find("[role=timer]").TextContent);
        Assert.Equal((Signal.End, TimeSpan.FromSeconds(120)), Assert.Single(field.Signals.Planned));
        Assert.Equal(WakeState.Held, field.Wake.State);

        field.Time.Advance(TimeSpan.FromSeconds(10.01));
        page.WaitForAssertion(() => Assert.Equal("1:50", page.Find("[role=timer]").TextContent));
    }

    /// <summary>Not a second after the opening, which the light's changes take out of step with what is left; and never from more than the plan says.</summary>
    [Fact]
    public async Task The_numerals_change_on_the_second_of_what_is_left()
    {
        var page = await ShowAsync(120.4);
        Assert.Equal("2:00", page.Find("[role=timer]").TextContent);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal("2:00", page.Find("[role=timer]").TextContent);
        field.Time.Advance(TimeSpan.FromSeconds(1.39));
        Assert.Equal("2:00", page.Find("[role=timer]").TextContent);
        field.Time.Advance(TimeSpan.FromSeconds(0.02));
        page.WaitForAssertion(() => Assert.Equal("1:59", page.Find("[role=timer]").TextContent));
    }

    [Fact]
    public async Task From_second_to_second_only_the_face_is_drawn_and_at_the_end_the_page()
    {
        var page = await ShowAsync(60);
        await page.Find(".thumb button").ClickAsync(new());
        var action = page.FindComponent<PrimaryAction>();
        var drawn = action.RenderCount;
        field.Time.Advance(TimeSpan.FromSeconds(3.01));
        page.WaitForAssertion(() => Assert.Equal("0:57", page.Find("[role=timer]").TextContent));
        Assert.Equal(drawn, action.RenderCount);
        field.Time.Advance(TimeSpan.FromSeconds(58));
        page.WaitForAssertion(() => Assert.Contains("Close the hole now", page.Find(".thumb button").TextContent, StringComparison.Ordinal));
        Assert.True(action.RenderCount > drawn);
    }

    [Fact]
    public async Task The_end_asks_to_close_the_hole_and_counts_what_is_over()
    {
        var page = await ShowAsync(60);
        await page.Find(".thumb button").ClickAsync(new());
        field.Time.Advance(TimeSpan.FromSeconds(72.01));
        page.WaitForAssertion(() => Assert.Equal("+0:12", page.Find("[role=timer]").TextContent));
        Assert.Contains("Close the hole now", page.Find(".thumb button").TextContent, StringComparison.Ordinal);
        Assert.True(field.Signals.Vibrations > 0);

        await page.Find(".thumb button").ClickAsync(new());
        Assert.Contains("over the plan", page.Markup, StringComparison.Ordinal);
        Assert.Equal(WakeState.Off, field.Wake.State);
    }

    [Fact]
    public async Task Coming_back_to_an_open_hole_asks_what_the_light_did()
    {
        var sheet = await field.PlannedSheetAsync(200);
        await new ExposeState(sheet).OpenAsync(Journal.Bodies.LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(60));
        var page = Render(sheet);
        Assert.Contains("What did the light do meanwhile?", page.Markup, StringComparison.Ordinal);
        Assert.Equal("2:20", page.Find("[role=timer]").TextContent);
    }

    [Fact]
    public async Task An_update_never_starts_while_the_hole_is_open()
    {
        var page = await ShowAsync(60);
        await page.Find(".thumb button").ClickAsync(new());
        var updates = new Foramen.Field.Versions.Updates(field.Platform, field.Session);
        await updates.WatchAsync();
        field.Platform.OnState!("update");
        updates.Start();
        Assert.True(updates.Waits);
        Assert.False(field.Platform.Updated);
        await page.Find(".thumb button").ClickAsync(new());
        updates.Start();
        Assert.True(field.Platform.Updated);
    }

    private async Task<IRenderedComponent<SheetPage>> ShowAsync(double seconds) => Render(await field.PlannedSheetAsync(seconds));

    private IRenderedComponent<SheetPage> Render(SheetState sheet)
        => field.Render<SheetPage>(p => p.Add(page => page.SheetText, sheet.Id.ToString()).Add(page => page.StepText, "expose"));
}
