using System.Collections.Immutable;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>One piece of paper and all that happened to it.</summary>
public sealed record Sheet
{
    /// <summary>Its id.</summary>
    public required Ulid Id { get; init; }

    /// <summary>How it began; null if that entry has not arrived yet, or was withdrawn.</summary>
    public Stamped<SheetStarted>? Started { get; init; }

    /// <summary>Whether its beginning was declared void and not said again: not to be shown among the sheets.</summary>
    public bool Withdrawn => Started is null && StartVoided;

    /// <summary>
    /// Whether it is only known here by the bottle it went through: somebody else's sheet out of a workshop's bottle. It counts for the bottle and is not shown among the sheets.
    /// </summary>
    public bool IsAnothers => (Developed ?? (object?)Fixed) is not null
        && this is
        {
            Started: null, StartVoided: false, Photograph: null, Frame: null, Tones.IsEmpty: true, Motions.IsEmpty: true, Plan: null, Flashes.IsEmpty: true,
            HoleEvents.IsEmpty: true, Baths.IsEmpty: true, Judgement: null, Scans.IsEmpty: true,
        };

    /// <summary>The photograph of the subject, the last one added.</summary>
    public Stamped<PhotographAdded>? Photograph { get; init; }

    /// <summary>The frame, as last chosen.</summary>
    public Stamped<FrameChosen>? Frame { get; init; }

    /// <summary>Tones on the ladder, in the order they were first read, each with its last reading.</summary>
    public ImmutableList<Stamped<ToneRead>> Tones { get; init; } = [];

    /// <summary>Moving regions, in the order they were first marked, each as last said.</summary>
    public ImmutableList<Stamped<MotionMarked>> Motions { get; init; } = [];

    /// <summary>When moving regions began to move and stopped, in the journal's order.</summary>
    public ImmutableList<MotionTouch> MotionTouches { get; init; } = [];

    /// <summary>The last plan.</summary>
    public Stamped<PlanMade>? Plan { get; init; }

    /// <summary>Flashes, oldest first.</summary>
    public ImmutableList<FlashGiven> Flashes { get; init; } = [];

    /// <summary>What happened at the hole, in the journal's order; see <see cref="TallyAt"/>.</summary>
    public ImmutableList<HoleEvent> HoleEvents { get; init; } = [];

    /// <summary>Processing runs, oldest first.</summary>
    public ImmutableList<BathRun> Baths { get; init; } = [];

    /// <summary>The bottle it was developed in, as last said.</summary>
    public Stamped<DevelopedIn>? Developed { get; init; }

    /// <summary>The bottle it was fixed in, as last said.</summary>
    public Stamped<FixedIn>? Fixed { get; init; }

    /// <summary>The last judgement.</summary>
    public Stamped<PrintJudged>? Judgement { get; init; }

    /// <summary>Scans and photographs of the print, oldest first.</summary>
    public ImmutableList<Stamped<ScanAdded>> Scans { get; init; } = [];

    /// <summary>The picture that shows it best: the last scan or photograph of the print, or else the photograph of the subject; null where there is neither.</summary>
    public string? PictureHash => Scans.IsEmpty ? Photograph?.Body.ContentHash : Scans[^1].Body.ContentHash;

    /// <summary>The entries that made it what it is, in order; without what is void.</summary>
    public ImmutableList<Ulid> History { get; init; } = [];

    /// <summary>The step to go on with: the one after the last that was done, or the one that is under way.</summary>
    public SheetStep Step => this switch
    {
        { Judgement: not null } => SheetStep.Done,
        { Bath.Finished: not null } => SheetStep.Judge,
        { Bath: not null } => SheetStep.Process,
        { HoleEvents.IsEmpty: false } => HoleEvents[^1].Kind == HoleEventKind.Closed ? SheetStep.Process : SheetStep.Expose,
        { Flashes.IsEmpty: false } => Flashes[^1].Running ? SheetStep.Flash : SheetStep.Expose,
        { Plan: { } plan } => plan.Body.FlashSeconds > 0 ? SheetStep.Flash : SheetStep.Expose,
        { Tones.IsEmpty: false } => SheetStep.Plan,
        { Frame: not null } => SheetStep.Meter,
        _ => SheetStep.Frame,
    };

    /// <summary>The last processing run.</summary>
    public BathRun? Bath => Baths.IsEmpty ? null : Baths[^1];

    internal bool StartVoided { get; init; }

    /// <summary>What the light did up to now, for the Engine's tally.</summary>
    /// <param name="now">Now, by this device's clock.</param>
    public TallyRecord TallyAt(DateTimeOffset now) => TallyRecord.Of(HoleEvents, now);

    internal Sheet After(EntryOrder order, DateTimeOffset at, SheetBody body)
    {
        Stamped<T> Stamp<T>(T said) => new(order, at, said);

        var next = body switch
        {
            SheetStarted said => this with { Started = Stamp(said) },
            PhotographAdded said => this with { Photograph = Stamp(said) },
            FrameChosen said => this with { Frame = Stamp(said) },
            ToneRead said => this with { Tones = WithTone(Stamp(said)) },
            ToneRemoved said => this with { Tones = Tones.RemoveAll(tone => tone.Body.Tone == said.Tone) },
            MotionMarked said => this with { Motions = WithMotion(Stamp(said)) },
            MotionRemoved said => this with { Motions = Motions.RemoveAll(motion => motion.Body.Motion == said.Motion) },
            MotionStarted said => this with { MotionTouches = MotionTouches.Add(new MotionTouch(said.Motion, true, at, said.SecondsAgo ?? 0)) },
            MotionStopped said => this with { MotionTouches = MotionTouches.Add(new MotionTouch(said.Motion, false, at, said.SecondsAgo ?? 0)) },
            PlanMade said => this with { Plan = Stamp(said) },
            FlashStarted said => this with { Flashes = Flashes.Add(new FlashGiven(Stamp(said), null)) },
            FlashFinished said => this with { Flashes = WithFlashEnd(Stamp(said)) },
            HoleOpened said => AtHole(HoleEventKind.Opened, said.SecondsAgo, said.LightStops, said.Light),
            LightChanged said => AtHole(HoleEventKind.LightChanged, said.SecondsAgo, said.LightStops, said.Light),
            HoleClosed said => AtHole(HoleEventKind.Closed, said.SecondsAgo, null, null),
            BathStarted said => this with { Baths = Baths.Add(new BathRun { Started = Stamp(said) }) },
            BathStep said => WithBath(run => run with { Steps = run.Steps.Add(Stamp(said)) }),
            BathFinished said => WithBath(run => run with { Finished = Stamp(said) }),
            DevelopedIn said => this with { Developed = Stamp(said) },
            FixedIn said => this with { Fixed = Stamp(said) },
            PrintJudged said => this with { Judgement = Stamp(said) },
            ScanAdded said => this with { Scans = Scans.Add(Stamp(said)) },
            _ => this,
        };
        return next with { History = History.Add(order.Id) };

        Sheet AtHole(HoleEventKind kind, double? secondsAgo, double? stops, LightWord? light)
            => this with { HoleEvents = HoleEvents.Add(new HoleEvent(kind, order, at, secondsAgo ?? 0, stops ?? 0, light)) };
    }

    private ImmutableList<Stamped<ToneRead>> WithTone(Stamped<ToneRead> tone)
    {
        var known = Tones.FindIndex(other => other.Body.Tone == tone.Body.Tone);
        return known < 0 ? Tones.Add(tone) : Tones.SetItem(known, tone);
    }

    private ImmutableList<Stamped<MotionMarked>> WithMotion(Stamped<MotionMarked> motion)
    {
        var known = Motions.FindIndex(other => other.Body.Motion == motion.Body.Motion);
        return known < 0 ? Motions.Add(motion) : Motions.SetItem(known, motion);
    }

    private ImmutableList<FlashGiven> WithFlashEnd(Stamped<FlashFinished> end)
        => !Flashes.IsEmpty && Flashes[^1].Running
            ? Flashes.SetItem(Flashes.Count - 1, Flashes[^1] with { Finished = end })
            : Flashes.Add(new FlashGiven(null, end));

    // A step or an end without a beginning, or after the end, belongs to a run whose beginning was not written down.
    private Sheet WithBath(Func<BathRun, BathRun> change)
        => Bath is { Finished: null } running
            ? this with { Baths = Baths.SetItem(Baths.Count - 1, change(running)) }
            : this with { Baths = Baths.Add(change(new BathRun())) };
}
