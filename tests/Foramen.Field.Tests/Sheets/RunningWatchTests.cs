using Bunit;
using Foramen.Field.Device;
using Foramen.Field.Ledgers;
using Foramen.Field.Settings;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Sheets.Flash;
using Foramen.Field.Sheets.Process;
using Foramen.Field.Shell;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets;

/// <summary>What runs is looked after on every page: heard, felt, shown, with the screen awake.</summary>
public sealed class RunningWatchTests : IDisposable
{
    private readonly FieldContext field = new();

    private RunningWatch Watch => @field.Services.GetRequiredService<RunningWatch>();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task An_exposure_ends_with_a_signal_also_when_the_page_was_left()
    {
        var sheet = await field.PlannedSheetAsync(120);
        var layout = Layout("ledger");
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        layout.WaitForAssertion(() => Assert.Equal((Signal.End, TimeSpan.FromSeconds(120)), Assert.Single(field.Signals.Planned)));
        Assert.Equal(WakeState.Held, field.Wake.State);
        layout.WaitForAssertion(() => Assert.Contains("Elevator · Expose", layout.Find("#running").TextContent, StringComparison.Ordinal));
        Assert.Equal($"sheet/{sheet.Id}/expose", layout.Find("#running a").GetAttribute("href"));

        field.Time.Advance(TimeSpan.FromSeconds(75.01));
        layout.WaitForAssertion(() => Assert.Equal("0:45", layout.Find("#running .left").TextContent));
        Assert.Equal(0, field.Signals.Vibrations);
        field.Time.Advance(TimeSpan.FromSeconds(52));
        Assert.Equal(1, field.Signals.Vibrations);
        layout.WaitForAssertion(() => Assert.Equal("+0:07", layout.Find("#running .left").TextContent));
        Assert.Contains("over", layout.Find("#running a").ClassName, StringComparison.Ordinal);
        Assert.Contains("Elevator: the time of Expose is over.", layout.Markup, StringComparison.Ordinal);

        await new ExposeState(sheet).CloseAsync();
        layout.WaitForAssertion(() => Assert.Empty(layout.FindAll("#running")));
        Assert.Equal(WakeState.Off, field.Wake.State);
    }

    [Fact]
    public async Task A_cloud_moves_the_signal_and_a_covered_hole_has_none()
    {
        var sheet = await field.PlannedSheetAsync(120);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        await Watch.FollowAsync();
        field.Time.Advance(TimeSpan.FromSeconds(60));
        await expose.SayAsync(LightWord.Cloud);
        await Watch.FollowAsync();
        var left = expose.StandingAt(sheet.Clock.Now)!.LeftSeconds!.Value;
        Assert.True(left > 120);
        Assert.Equal(left, Assert.Single(field.Signals.Planned).After.TotalSeconds, 0.01);
        await expose.SayAsync(LightWord.Covered);
        await Watch.FollowAsync();
        Assert.Empty(field.Signals.Planned);
        Assert.Null(Assert.Single(Watch.Things).Due);
        field.Time.Advance(TimeSpan.FromHours(2));
        Assert.Equal(0, field.Signals.Vibrations);
    }

    [Fact]
    public async Task A_bath_and_an_exposure_are_both_heard_in_the_order_of_their_times()
    {
        var first = await field.ExposedSheetAsync();
        await new ProcessState(first).StartAsync();
        var second = await SecondAsync();
        await new ExposeState(second).OpenAsync(LightWord.Sun);
        await Watch.FollowAsync();
        // Ten seconds of continuous movement, then every ten (the developer's usual rhythm), to 75 s; the exposure of 90 s.
        Assert.Equal([20, 30, 40, 50, 60, 70, 75, 90], field.Signals.Planned.Select(one => Math.Round(one.After.TotalSeconds)));
        Assert.Equal(2, field.Signals.Planned.Count(one => one.Signal == Signal.End));
        field.Time.Advance(TimeSpan.FromSeconds(80));
        Assert.Equal(1, field.Signals.Vibrations);
        field.Time.Advance(TimeSpan.FromSeconds(15));
        Assert.Equal(2, field.Signals.Vibrations);
    }

    [Fact]
    public async Task Closing_the_hole_while_it_rings_silences_it_and_nothing_rings_twice()
    {
        var sheet = await field.PlannedSheetAsync(60);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(61));
        await field.Session.AppendAsync(new SheetStarted { Sheet = field.Session.NewId(), Name = "next" });
        Assert.Single(field.Signals.Planned);
        await expose.CloseAsync();
        Assert.Empty(field.Signals.Planned);

        await expose.ReopenAsync();
        Assert.Empty(field.Signals.Planned);
    }

    // What is being heard would be cut off.
    [Fact]
    public async Task What_changes_nothing_of_the_times_leaves_the_signals_alone()
    {
        var sheet = await field.PlannedSheetAsync(120);
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        await Watch.FollowAsync();
        field.Time.Advance(TimeSpan.FromSeconds(30));
        await field.Session.AppendAsync(new SheetStarted { Sheet = field.Session.NewId(), Name = "next" });
        await Watch.FollowAsync();
        Assert.Equal(TimeSpan.FromSeconds(120), Assert.Single(field.Signals.Planned).After);
    }

    [Fact]
    public async Task Sound_that_becomes_possible_or_a_page_that_was_away_plans_the_signals_anew()
    {
        var sheet = await field.PlannedSheetAsync(120);
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        await Watch.FollowAsync();
        field.Time.Advance(TimeSpan.FromSeconds(30));
        field.Signals.BecomeReady();
        Assert.Equal(TimeSpan.FromSeconds(90), Assert.Single(field.Signals.Planned).After);
        field.Time.Advance(TimeSpan.FromSeconds(30));
        field.Platform.Return();
        Assert.Equal(TimeSpan.FromSeconds(60), Assert.Single(field.Signals.Planned).After);
    }

    [Fact]
    public async Task Without_sound_nothing_is_planned_and_without_vibration_nothing_is_felt()
    {
        var keeper = field.Services.GetRequiredService<SettingsKeeper>();
        keeper.Set(keeper.Current with { Sound = false, Vibration = false });
        var sheet = await field.PlannedSheetAsync(120);
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        await Watch.FollowAsync();
        Assert.Empty(field.Signals.Planned);
        keeper.Set(keeper.Current with { Sound = true });
        Assert.Single(field.Signals.Planned);
        field.Time.Advance(TimeSpan.FromSeconds(130));
        Assert.Equal(0, field.Signals.Vibrations);
    }

    [Fact]
    public async Task The_page_that_looks_after_it_does_not_show_it_twice_and_the_others_do()
    {
        var sheet = await field.PlannedSheetAsync(120, flashSeconds: 20);
        await new FlashState(sheet).StartAsync(FlashTarget.Card);
        await Watch.FollowAsync();
        var strip = field.Render<RunningStrip>();
        Assert.Contains("Elevator · Flash", strip.Markup, StringComparison.Ordinal);
        var navigation = field.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo($"sheet/{sheet.Id}/flash");
        strip.WaitForAssertion(() => Assert.Empty(strip.FindAll("li")));
        navigation.NavigateTo($"sheet/{sheet.Id}/plan");
        strip.WaitForAssertion(() => Assert.Single(strip.FindAll("li")));
    }

    [Fact]
    public async Task What_was_forgotten_for_half_a_day_calls_nobody()
    {
        var sheet = await field.PlannedSheetAsync(120);
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromHours(11.9));
        await Watch.FollowAsync();
        Assert.Single(Watch.Things);
        field.Time.Advance(TimeSpan.FromHours(0.3));
        await Watch.FollowAsync();
        Assert.Empty(Watch.Things);
        Assert.Equal(WakeState.Off, field.Wake.State);
    }

    private IRenderedComponent<MainLayout> Layout(string at)
    {
        field.Services.GetRequiredService<NavigationManager>().NavigateTo(at);
        return field.Render<MainLayout>(parameters => parameters.Add(layout => layout.Body, builder =>
        {
            builder.OpenComponent<LedgerPage>(0);
            builder.CloseComponent();
        }));
    }

    private async Task<SheetState> SecondAsync()
    {
        var id = field.Session.NewId();
        await field.Session.AppendAsync(new SheetStarted { Sheet = id, Name = "Weir" }, new PlanMade { Sheet = id, ExposureSeconds = 90 });
        var state = field.Services.GetRequiredService<SheetState>();
        state.Show(id);
        return state;
    }
}
