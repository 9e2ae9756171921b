using Foramen.Field.Sheets.Expose;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets.Expose;

public sealed class ExposeStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    /// <summary>
    /// A cloud that takes three quarters of the light (two stops) at 40 s of 120 s. By Schwarzschild's law equal effect is I·t^p, so the full time
    /// at a quarter of the light is 120·4^(1/p); with p = 0.9 and a third done, two thirds of it are left: 2/3·120·4^(1/0.9) = 373.3 s.
    /// Worked by hand from the law (Schwarzschild, Astrophysical Journal 11, 1900).
    /// </summary>
    [Fact]
    public async Task A_cloud_at_a_third_leaves_what_the_law_says()
    {
        var sheet = await field.PlannedSheetAsync(120);
        var expose = new ExposeState(sheet);
        Assert.True(await expose.OpenAsync(LightWord.Sun));
        field.Time.Advance(TimeSpan.FromSeconds(40));
        Assert.True(await expose.SayAsync(LightWord.Cloud));

        var now = expose.StandingAt(sheet.Clock.Now)!;
        Assert.Equal(1.0 / 3, now.Progress, 1e-6);
        Assert.Equal(2.0 / 3 * 120 * Math.Pow(4, 1 / 0.9), now.LeftSeconds!.Value, 0.01);
        Assert.Equal(-2, now.LightStops);
    }

    [Fact]
    public async Task A_covered_hole_costs_nothing_and_shows_no_time()
    {
        var sheet = await field.PlannedSheetAsync(100);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(30));
        await expose.SayAsync(LightWord.Covered);
        field.Time.Advance(TimeSpan.FromMinutes(5));
        Assert.Null(expose.StandingAt(sheet.Clock.Now)!.LeftSeconds);
        Assert.Equal(0.3, expose.StandingAt(sheet.Clock.Now)!.Progress, 1e-6);
        await expose.SayAsync(LightWord.Sun);
        Assert.Equal(70, expose.StandingAt(sheet.Clock.Now)!.LeftSeconds!.Value, 0.01);
    }

    [Fact]
    public async Task What_is_said_late_counts_from_when_it_was()
    {
        var sheet = await field.PlannedSheetAsync(100);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(50));
        await expose.SayAsync(LightWord.Covered, secondsAgo: 20);
        Assert.Equal(0.3, expose.StandingAt(sheet.Clock.Now)!.Progress, 1e-6);
    }

    [Fact]
    public async Task The_tally_stands_where_it_truly_is_after_everything_was_closed()
    {
        var sheet = await field.PlannedSheetAsync(180);
        await new ExposeState(sheet).OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(77));

        using var after = new FieldContext(field.Store);
        after.Time.SetUtcNow(field.Time.GetUtcNow());
        await after.Session.OpenAsync();
        var same = new Foramen.Field.Sheets.SheetState(after.Session, new Foramen.Field.Time.Clock(after.Time, after.Platform));
        same.Show(sheet.Id);
        var now = new ExposeState(same).StandingAt(same.Clock.Now)!;
        Assert.True(now.IsOpen);
        Assert.Equal(103, now.LeftSeconds!.Value, 0.01);
    }

    [Fact]
    public async Task A_clock_set_back_is_said_and_never_counted_twice()
    {
        var sheet = await field.PlannedSheetAsync(100);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(40));
        await expose.SayAsync(LightWord.ThinCloud);
        using var after = new FieldContext(field.Store);
        after.Time.SetUtcNow(FieldContext.Noon);
        await after.Session.OpenAsync();
        var same = new Foramen.Field.Sheets.SheetState(after.Session, new Foramen.Field.Time.Clock(after.Time, after.Platform));
        same.Show(sheet.Id);
        var now = new ExposeState(same).StandingAt(FieldContext.Noon.AddSeconds(10))!;
        Assert.True(now.ClockWentBack);
        Assert.Equal(0.4, now.Progress, 1e-6);
    }

    [Fact]
    public async Task A_full_device_refuses_in_a_sentence_and_the_hole_stays_shut()
    {
        var sheet = await field.PlannedSheetAsync(100);
        field.Store.Refuse = Foramen.Field.Storage.StoreRefusal.Full;
        var expose = new ExposeState(sheet);
        Assert.False(await expose.OpenAsync(LightWord.Sun));
        Assert.False(expose.IsOpen);
        Assert.Contains("no room", sheet.Refusal, StringComparison.Ordinal);
    }
}
