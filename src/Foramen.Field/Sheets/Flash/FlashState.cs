using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets.Flash;

/// <summary>The flash of a sheet, worked out anew from the journal and the wall clock each time it is asked.</summary>
public sealed class FlashState(SheetState sheet)
{
    /// <summary>Shorter than this a hand cannot uncover and cover a hole evenly, s; common practice, no source.</summary>
    public const double ShortestSeconds = 2;

    /// <summary>The plan; null where there is none yet.</summary>
    public PlanMade? Plan => sheet.Sheet?.Plan?.Body;

    /// <summary>Whether the plan has a flash.</summary>
    public bool IsPlanned => Plan is { FlashSeconds: > 0 };

    /// <summary>Whether a flash is being given.</summary>
    public bool IsRunning => sheet.Sheet is { } one && Running.FlashIsOn(one);

    /// <summary>Whether a flash has been given, and none is running.</summary>
    public bool WasGiven => sheet.Sheet is { Flashes.IsEmpty: false } && !IsRunning;

    /// <summary>The luminance of what the plan points at, as a meter at ISO 100 shows it; null where the plan does not say.</summary>
    public ExposureValue? Reading => Plan?.FlashLuminanceCandelasPerSquareMetre is { } candelas and > 0
        ? LightMeter.Usual.ExposureValueOf(Luminance.FromCandelasPerSquareMetre(candelas))
        : null;

    /// <summary>Time given in all flashes that ended, s; null where the clock was set back in one, so that it is not known.</summary>
    public double? GivenSeconds
    {
        get
        {
            var ended = sheet.Sheet?.Flashes.FindAll(flash => !flash.Running) ?? [];
            return ended.TrueForAll(flash => flash.GivenSeconds is not null) ? ended.Sum(flash => flash.GivenSeconds!.Value) : null;
        }
    }

    /// <summary>How far the flash on the sheet is from the plan's, stops; null where it is as good as planned (a quarter stop), not known or not planned, and once the hole was opened.</summary>
    public double? OffPlanStops
        => WasGiven && sheet.Sheet!.HoleEvents.IsEmpty && GivenSeconds is > 0 and { } given && Plan is { FlashSeconds: > 0 and var planned } && Math.Log2(given / planned) is var stops && Math.Abs(stops) > 0.25
            ? stops
            : null;

    /// <summary>What is missing to the plan's flash, s, where a hand can give it.</summary>
    public double? RestSeconds => OffPlanStops < 0 && Plan!.FlashSeconds - GivenSeconds is >= ShortestSeconds and var rest ? rest : null;

    /// <summary>How the flash stands; null where none is being given.</summary>
    public StepTime? TimeAt(DateTimeOffset now)
        => IsRunning && sheet.Sheet!.Flashes[^1] is { Started: { } started } flash
            ? new StepTime(started.At, started.Body.PlannedSeconds, flash.ElapsedSeconds(now), now < started.At)
            : null;

    /// <summary>Writes that the flash began: all of it, or what is missing.</summary>
    public Task<bool> StartAsync(FlashTarget target) => sheet.WriteAsync(new FlashStarted
    {
        Sheet = sheet.Id,
        PlannedSeconds = RestSeconds ?? Plan!.FlashSeconds,
        PointedAt = FlashTargetText.NameOf(target),
    });

    /// <summary>Writes that the hole was covered, now, or when the planned time was over.</summary>
    public Task<bool> FinishAsync(bool onTime = false) => sheet.WriteAsync(new FlashFinished
    {
        Sheet = sheet.Id,
        GivenSeconds = onTime ? sheet.Sheet!.Flashes[^1].Started!.Body.PlannedSeconds : null,
    });
}
