using Foramen.Field.Learning;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Flash;
using Foramen.Field.Sheets.Plan;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Plan;

public sealed class PlanStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_plan_is_recommended_kept_and_found_again()
    {
        var (sheet, plan) = await OpenAsync();
        Assert.NotNull(plan.Recommended);
        Assert.True(await plan.KeepAsync());
        var kept = sheet.Sheet!.Plan!.Body;
        Assert.Equal(plan.Recommended!.Exposure.Time.Seconds, kept.ExposureSeconds, 1e-9);
        Assert.InRange(kept.Odds!.Value, 0.01, 0.99);
        Assert.Equal(2, kept.Tones!.Count);

        plan.TryTime(kept.ExposureSeconds * 2);
        await plan.KeepAsync();
        var again = new PlanState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Services.GetRequiredService<Lessons>());
        await again.LoadAsync();
        Assert.Equal(kept.ExposureSeconds * 2, again.Exposure.Time.Seconds, 1e-6);
    }

    [Fact]
    public async Task More_time_lightens_the_print_of_a_direct_positive()
    {
        var (_, plan) = await OpenAsync();
        plan.PreparePrint();
        Assert.True(plan.HasPrint);
        var (width, height) = plan.PrintSize;
        Assert.Equal(PlanState.LongSide, Math.Max(width, height));
        var middle = (height / 2 * width) + (width / 4);
        var before = plan.Draw()[middle];
        plan.TryTime(plan.Exposure.Time.Seconds * 4);
        Assert.True(plan.Draw()[middle] > before + 10);
        var time = plan.Exposure.Time.Seconds;
        plan.Reset();
        Assert.True(plan.Exposure.Time.Seconds < time);
    }

    // A direct positive is mirrored in the hand, and a mask reads right there: what is kept to the right of the middle darkens the right of the print, where no light falls.
    [Fact]
    public async Task The_print_is_as_it_will_be_held_with_a_chosen_mask_in_the_light()
    {
        var (sheet, plan) = await OpenAsync();
        plan.PreparePrint();
        Assert.True(plan.IsMirrored);
        Assert.Null(plan.Mask);
        var mask = await KeepAsync(sheet, sheet.Sheet!.Started!.Body.Camera, 5);
        await KeepAsync(sheet, field.Session.NewId(), 5);
        Assert.Equal(mask, Assert.Single(plan.Masks).Mask);
        var (width, height) = plan.PrintSize;
        int right = (height / 2 * width) + (3 * width / 4), left = (height / 2 * width) + (width / 4);
        plan.TryTime(plan.Exposure.Time.Seconds * 4);
        var before = plan.Draw().ToArray();
        plan.UseMask(mask);
        var after = plan.Draw().ToArray();
        Assert.True(after[right] < before[right] - 10);
        Assert.Equal(before[left], after[left]);
        plan.UseMask(null);
        Assert.Equal(before, plan.Draw().ToArray());
    }

    [Fact]
    public async Task A_mask_that_cannot_lie_there_is_said_and_changes_nothing()
    {
        var (sheet, plan) = await OpenAsync();
        plan.PreparePrint();
        var mask = await KeepAsync(sheet, null, 1500);
        plan.UseMask(mask);
        Assert.Contains("nearer to the paper", plan.MaskMessage, StringComparison.Ordinal);
        Assert.Null(plan.Mask);
    }

    private static async Task<Ulid> KeepAsync(SheetState sheet, Ulid? camera, double distance)
    {
        var id = sheet.Session.NewId();
        var ellipse = new MaskDefinition { Name = "a disc", Shape = "ellipse", WidthMillimetres = 20, XMillimetres = sheet.Camera!.SheetWidthMillimetres / 4, DistanceMillimetres = distance };
        Assert.True(await sheet.WriteAsync(new MaskDefined { Mask = id, Camera = camera, Definition = ellipse }));
        return id;
    }

    [Fact]
    public async Task A_reading_of_the_flash_surface_replaces_the_assumption()
    {
        var (_, plan) = await OpenAsync();
        Assert.True(plan.FlashIsAssumed);
        plan.TryFlash(0.5);
        var assumed = plan.Exposure.Flash.Seconds;
        Assert.True(plan.ReadFlashSurface($"{plan.FlashLuminance / 4:0} cd/m2"));
        Assert.False(plan.FlashIsAssumed);
        plan.TryFlash(0.5);
        Assert.True(plan.Exposure.Flash.Seconds > assumed * 3.5);
        Assert.False(plan.ReadFlashSurface("bright"));
        Assert.NotNull(plan.Message);
    }

    /// <summary>A flash that went on too long stays on the sheet; the time is planned anew for it, and nothing takes it off.</summary>
    [Fact]
    public async Task The_flash_on_the_sheet_is_what_is_planned_for()
    {
        var (sheet, plan) = await OpenAsync();
        plan.TryFlash(0.4);
        await plan.KeepAsync();
        var planned = sheet.Sheet!.Plan!.Body;
        await new FlashState(sheet).StartAsync(FlashTarget.Card);
        field.Time.Advance(TimeSpan.FromSeconds(planned.FlashSeconds * 2.5));
        await new FlashState(sheet).FinishAsync();

        var again = new PlanState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Services.GetRequiredService<Lessons>());
        await again.LoadAsync();
        var given = planned.FlashSeconds * 2.5;
        Assert.Equal(given, again.Exposure.Flash.Seconds, 0.01);
        Assert.Equal(given, again.Recommended!.Exposure.Flash.Seconds, 0.01);
        again.TryFlash(0);
        Assert.Equal(given, again.Exposure.Flash.Seconds, 0.01);
        await again.KeepAsync();
        Assert.Equal(given, sheet.Sheet!.Plan!.Body.FlashSeconds, 0.01);
        Assert.Null(new FlashState(sheet).OffPlanStops);
    }

    [Fact]
    public async Task A_time_chosen_by_hand_stays_where_the_flash_was_as_good_as_planned()
    {
        var (sheet, plan) = await OpenAsync();
        plan.TryFlash(0.4);
        plan.TryTime(plan.Exposure.Time.Seconds * 2);
        await plan.KeepAsync();
        var planned = sheet.Sheet!.Plan!.Body;
        await new FlashState(sheet).StartAsync(FlashTarget.Card);
        field.Time.Advance(TimeSpan.FromSeconds(planned.FlashSeconds * 1.05));
        await new FlashState(sheet).FinishAsync();

        var again = new PlanState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Services.GetRequiredService<Lessons>());
        await again.LoadAsync();
        Assert.Equal(planned.ExposureSeconds, again.Exposure.Time.Seconds, 1e-6);
        Assert.Equal(planned.FlashSeconds * 1.05, again.Exposure.Flash.Seconds, 0.01);
    }

    [Fact]
    public async Task Without_tones_there_is_no_plan()
    {
        var sheet = await field.LoadedSheetAsync();
        var plan = new PlanState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Services.GetRequiredService<Lessons>());
        await plan.LoadAsync();
        Assert.Null(plan.Forecast);
    }

    private Task<(SheetState Sheet, PlanState Plan)> OpenAsync() => JudgedSheets.PlannedAsync(field);
}
