using Foramen.Field.Learning;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Sheets.Plan;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using Foramen.Journal.Motions;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Motions;

/// <summary>A scene of two tones, dark to the left and light to the right, in which something moves.</summary>
public sealed class MotionInPlanTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task What_moves_is_drawn_and_told_and_can_be_left_out()
    {
        var (sheet, _) = await JudgedSheets.PlannedAsync(field);
        await MarkAsync(sheet, Wheel());
        var plan = await PlanAsync(sheet);
        plan.PreparePrint();
        Assert.True(plan.HasMotion);
        var line = Assert.Single(plan.Moving);
        Assert.Equal(plan.Exposure.Time.Seconds / 4, line.Turns!.Value, 1e-6);
        Assert.True(line.Trace.Moved < 0.2 * line.Trace.Still);

        var moving = plan.Draw().ToArray();
        plan.AsIfStill = true;
        var still = plan.Draw().ToArray();
        Assert.NotEqual(still, moving);
        var (width, height) = plan.PrintSize;

        // Above and below the wheel's hub the edge of the two tones is gone; at the print's border it stays.
        Assert.True(Step(still, width, height, 0.5) > 40, $"{Step(still, width, height, 0.5)}");
        Assert.True(Step(moving, width, height, 0.5) < Step(still, width, height, 0.5) / 4);
        Assert.Equal(Step(still, width, height, 0.06), Step(moving, width, height, 0.06));
    }

    [Fact]
    public async Task A_drag_to_another_time_is_told_when_it_settles()
    {
        var (sheet, _) = await JudgedSheets.PlannedAsync(field);
        await MarkAsync(sheet, Wheel());
        var plan = await PlanAsync(sheet);
        plan.PreparePrint();
        var planned = plan.Exposure.Time.Seconds;
        plan.TryTime(1);
        Assert.Equal(planned / 4, Assert.Single(plan.Moving).Turns!.Value, 1e-6);
        plan.Settle();
        Assert.Equal(0.25, Assert.Single(plan.Moving).Turns!.Value, 1e-6);
    }

    [Fact]
    public async Task A_region_beside_the_frame_is_said_and_the_print_is_drawn_without_it()
    {
        var (sheet, _) = await JudgedSheets.PlannedAsync(field);
        await MarkAsync(sheet, Wheel() with { Left = 0.001, Top = 0.001, Width = 0.004, Height = 0.004 });
        await sheet.WriteAsync(new FrameChosen { Sheet = sheet.Id, Orientation = SheetOrientation.Level, AimPanDegrees = 20, AimTiltDegrees = -20, PhotographFieldDegrees = sheet.Sheet!.Frame?.Body.PhotographFieldDegrees });
        var plan = await PlanAsync(sheet);
        plan.PreparePrint();
        Assert.Contains("“crank wheel”".Trim('“', '”'), plan.MotionMessage, StringComparison.Ordinal);
        Assert.Contains("outside the frame", plan.MotionMessage, StringComparison.Ordinal);
        Assert.Empty(plan.Moving);
        Assert.NotEmpty(plan.Draw().ToArray());
    }

    [Fact]
    public async Task Passers_come_with_what_hides_or_shows_them()
    {
        var (sheet, _) = await JudgedSheets.PlannedAsync(field);
        var passers = Wheel() with
        {
            Name = "walkers",
            How = MotionHow.Passes,
            TurnSeconds = null,
            WidthMetres = 0.5,
            SpeedMetresPerSecond = 1.4,
            DistanceMetres = 12,
            LuminanceRatio = 0.1,
            Number = 1,
        };
        await MarkAsync(sheet, passers);
        var plan = await PlanAsync(sheet);
        plan.PreparePrint();
        Assert.Contains(Assert.Single(plan.Moving).Ways, way => way.StartsWith("To be seen, one must stand still for", StringComparison.Ordinal));
    }

    // Stood for 30 of 90 s, then turned: two thirds of the light.
    [Fact]
    public async Task Touches_in_the_tally_are_what_the_print_is_measured_by()
    {
        var sheet = await field.PlannedSheetAsync(90);
        var id = await MarkAsync(sheet, Wheel());
        var expose = new ExposeState(sheet);
        Assert.Equal(id, Assert.Single(expose.Motions).Motion);
        await expose.OpenAsync(LightWord.Sun);
        await expose.TouchAsync(id, moves: false);
        Assert.False(expose.MovesAt(id, sheet.Clock.Now));
        field.Time.Advance(TimeSpan.FromSeconds(30));
        await expose.TouchAsync(id, moves: true);
        Assert.True(expose.MovesAt(id, sheet.Clock.Now));
        field.Time.Advance(TimeSpan.FromSeconds(60));
        await expose.CloseAsync();
        var went = Assert.Single(SheetMotions.AsItWent(sheet.Sheet!, sheet.Paper!.ToPaper().Failure, Engine.Quantities.Duration.FromSeconds(90), sheet.Clock.Now));
        Assert.Equal(2.0 / 3, went.MovingShare, 1e-6);
    }

    [Fact]
    public async Task What_only_passes_asks_for_no_touch()
    {
        var sheet = await field.PlannedSheetAsync(90);
        await MarkAsync(sheet, Wheel() with { How = MotionHow.Passes });
        Assert.Empty(new ExposeState(sheet).Motions);
    }

    [Fact]
    public async Task Changing_one_keeps_its_id_and_removing_it_takes_it_out()
    {
        var sheet = await field.PlannedSheetAsync(90);
        var id = await MarkAsync(sheet, Wheel());
        await sheet.WriteAsync(new MotionMarked { Sheet = sheet.Id, Motion = id, Definition = Wheel() with { TurnSeconds = 9 } });
        Assert.Equal(9, Assert.Single(sheet.Sheet!.Motions).Body.Definition.TurnSeconds);
        await sheet.WriteAsync(new MotionRemoved { Sheet = sheet.Id, Motion = id });
        Assert.Empty(sheet.Sheet!.Motions);
    }

    private static MotionDefinition Wheel() => new() { Name = "crank wheel", How = MotionHow.Turns, Left = 0.38, Top = 0.34, Width = 0.24, Height = 0.32, TurnSeconds = 4 };

    // How much lighter one side of the middle is than the other, a little above the middle of the print or near its border.
    private static int Step(byte[] greys, int width, int height, double down)
    {
        var row = (int)(down == 0.5 ? 0.42 * height : down * height) * width;
        return Math.Abs(greys[row + (width / 2) + 14] - greys[row + (width / 2) - 14]);
    }

    private static async Task<Ulid> MarkAsync(SheetState sheet, MotionDefinition definition)
    {
        var id = sheet.Session.NewId();
        Assert.True(await sheet.WriteAsync(new MotionMarked { Sheet = sheet.Id, Motion = id, Definition = definition }));
        return id;
    }

    private async Task<PlanState> PlanAsync(SheetState sheet)
    {
        var plan = new PlanState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Services.GetRequiredService<Lessons>());
        await plan.LoadAsync();
        return plan;
    }
}
