using Foramen.Field.Learning;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Judge;
using Foramen.Field.Sheets.Meter;
using Foramen.Field.Sheets.Plan;
using Foramen.Field.Tests.Sheets;
using Foramen.Journal.Bodies;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.TestKit;

/// <summary>Sheets of the same scene, planned, exposed as planned and judged.</summary>
internal static class JudgedSheets
{
    /// <summary>A sheet with its two tones read; of the first sheet's camera and paper where there is one.</summary>
    public static async Task<(SheetState Sheet, PlanState Plan)> PlannedAsync(FieldContext field, SheetState? like = null)
    {
        var sheet = like is null ? await field.LoadedSheetAsync() : await AnotherAsync(field, like);
        await ScenePictures.AddAsync(field, sheet);
        var scenes = field.Services.GetRequiredService<SheetScene>();
        var meter = new MeterState(sheet, scenes);
        await meter.LoadAsync();
        await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid);
        await meter.ReadPlaceAsync(0.75, 0.5, "quay", WantedRendering.TexturedHighlight);
        var plan = new PlanState(sheet, scenes, field.Services.GetRequiredService<Lessons>());
        await plan.LoadAsync();
        return (sheet, plan);
    }

    /// <summary>Exposes the sheet as it was planned and judges all its tones so many half stops lighter than wanted.</summary>
    public static async Task ExposeAndJudgeAsync(FieldContext field, SheetState sheet, PlanState plan, int halfStops, bool keeper = false, params MishapCause[] causes)
    {
        Assert.True(await plan.KeepAsync());
        await field.Session.AppendAsync(new HoleOpened { Sheet = sheet.Id });
        field.Time.Advance(TimeSpan.FromSeconds(plan.Exposure.Time.Seconds));
        await field.Session.AppendAsync(new HoleClosed { Sheet = sheet.Id });
        var judge = new JudgeState(sheet) { Keeper = keeper };
        foreach (var tone in judge.Tones)
        {
            for (var i = 0; i < Math.Abs(halfStops); i++)
            {
                tone.Move(Math.Sign(halfStops));
            }
        }

        foreach (var cause in causes)
        {
            judge.Toggle(cause);
        }

        Assert.True(await judge.SaveAsync());
    }

    private static async Task<SheetState> AnotherAsync(FieldContext field, SheetState like)
    {
        var started = like.Sheet!.Started!.Body;
        var id = field.Session.NewId();
        await field.Session.AppendAsync(new SheetStarted { Sheet = id, Camera = started.Camera, Paper = started.Paper });
        var state = field.Services.GetRequiredService<SheetState>();
        state.Show(id);
        return state;
    }
}
