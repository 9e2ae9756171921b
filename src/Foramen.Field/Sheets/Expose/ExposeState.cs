using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Motions;

namespace Foramen.Field.Sheets.Expose;

/// <summary>
/// The tally of a sheet: everything the page shows, worked out anew from the journal and the wall clock each time it is asked, so that a locked
/// phone, a reload or a reboot changes nothing.
/// </summary>
public sealed class ExposeState(SheetState sheet)
{
    private ExposureTally? tally;
    private PlanMade? tallied;

    /// <summary>The plan that the tally counts towards; null where there is none yet.</summary>
    public PlanMade? Plan => sheet.Sheet?.Plan?.Body;

    /// <summary>Whether the hole is open (it may be covered).</summary>
    public bool IsOpen => sheet.Sheet is { } one && Running.HoleIsOpen(one);

    /// <summary>Whether the hole has been open.</summary>
    public bool WasOpened => sheet.Sheet is { HoleEvents.IsEmpty: false };

    /// <summary>The light when the tones were metered, as said on opening.</summary>
    public LightWord Metered => FirstOpening?.Light is { } word and not LightWord.Covered and not LightWord.Reading ? word : LightWord.Sun;

    /// <summary>The light that was said last; null before opening.</summary>
    public HoleEvent? Last => sheet.Sheet is { HoleEvents.IsEmpty: false } one ? one.HoleEvents[^1] : null;

    /// <summary>When the hole was first opened, by the clock of its entry.</summary>
    public DateTimeOffset? OpenedAt => FirstOpening is { } first ? first.At.AddSeconds(-first.SecondsAgo) : null;

    private HoleEvent? FirstOpening => sheet.Sheet?.HoleEvents.Find(e => e.Kind == HoleEventKind.Opened);

    /// <summary>How the tally stands now.</summary>
    public TallyStanding? StandingAt(DateTimeOffset now)
    {
        if (sheet.Sheet is not { } one || Tally() is not { } counted)
        {
            return null;
        }

        var record = one.TallyAt(now);
        var progress = counted.Progress(record.Spans);
        var light = Stops.FromValue(record.LightStops);
        var full = counted.FullTimeAt(light).Seconds;
        return new TallyStanding(
            progress,
            record.IsCovered ? null : counted.Remaining(progress, light).Seconds,
            Math.Max(0, progress - 1) * full,
            record.ElapsedSeconds,
            record.LightStops,
            record.IsOpen,
            record.IsCovered,
            record.ClockWentBack,
            progress > 1e-6 ? counted.OverOrUnder(progress).Value : null);
    }

    /// <summary>Writes that the hole was opened, in the light that was metered.</summary>
    public Task<bool> OpenAsync(LightWord metered) => sheet.WriteAsync(new HoleOpened { Sheet = sheet.Id, Light = metered, LightStops = 0 });

    /// <summary>Writes that the hole was opened again, in the light that was said last.</summary>
    public Task<bool> ReopenAsync()
    {
        var light = sheet.Sheet!.HoleEvents.FindLast(e => e.Kind != HoleEventKind.Closed && e.Light != LightWord.Covered);
        return sheet.WriteAsync(new HoleOpened { Sheet = sheet.Id, Light = light?.Light, LightStops = light?.LightStops ?? 0 });
    }

    /// <summary>Writes what the light is now, or became some time ago.</summary>
    public Task<bool> SayAsync(LightWord word, double secondsAgo = 0) => sheet.WriteAsync(new LightChanged
    {
        Sheet = sheet.Id,
        Light = word,
        LightStops = word == LightWord.Covered ? 0 : LightSteps.Against(word, Metered),
        SecondsAgo = secondsAgo > 0 ? secondsAgo : null,
    });

    /// <summary>Writes a new reading: the light against the metered light.</summary>
    public Task<bool> SayReadingAsync(double stops) => sheet.WriteAsync(new LightChanged { Sheet = sheet.Id, Light = LightWord.Reading, LightStops = stops });

    /// <summary>What was marked as moving and may be touched when it starts or stops; things that only pass are counted beforehand.</summary>
    public IReadOnlyList<MotionMarked> Motions => [.. (sheet.Sheet?.Motions ?? []).Select(one => one.Body).Where(one => one.Definition.How != MotionHow.Passes)];

    /// <summary>Whether it moves at an instant, as last touched or as expected.</summary>
    public bool MovesAt(Ulid motion, DateTimeOffset now) => sheet.Sheet is { } one && SheetMotions.MovesAt(one, motion, now);

    /// <summary>Writes that something began to move or stopped, now or some time ago.</summary>
    public Task<bool> TouchAsync(Ulid motion, bool moves, double secondsAgo = 0)
    {
        double? ago = secondsAgo > 0 ? secondsAgo : null;
        return sheet.WriteAsync(moves
            ? new MotionStarted { Sheet = sheet.Id, Motion = motion, SecondsAgo = ago }
            : new MotionStopped { Sheet = sheet.Id, Motion = motion, SecondsAgo = ago });
    }

    /// <summary>Writes that the hole was closed.</summary>
    public Task<bool> CloseAsync() => sheet.WriteAsync(new HoleClosed { Sheet = sheet.Id });

    private ExposureTally? Tally()
    {
        if (Plan is not { } plan)
        {
            return null;
        }

        if (tally is null || tallied != plan)
        {
            tallied = plan;
            tally = ExposureTally.For(FailureOf(sheet.Paper), Duration.FromSeconds(plan.ExposureSeconds));
        }

        return tally;
    }

    private static FailureLaw FailureOf(PaperDefinition? paper)
        => (paper ?? PaperReading.Unknown("unknown", "negative")).ToPaper().Failure;
}
