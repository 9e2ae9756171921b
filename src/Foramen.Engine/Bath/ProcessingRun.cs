using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// A plan that was begun at an instant, and the instants at which later steps were begun by hand. Nothing else is kept, so it comes back
/// unharmed after a reload: every moment follows from these and the clock. Steps not begun by hand follow as planned. Immutable.
/// </summary>
public sealed record ProcessingRun
{
    private ProcessingRun(ProcessingPlan plan, IReadOnlyList<(int Step, DateTimeOffset At)> marks)
    {
        Plan = plan;
        Marks = marks;
    }

    /// <summary>The plan.</summary>
    public ProcessingPlan Plan { get; }

    /// <summary>Which steps were begun when; the first is the start.</summary>
    public IReadOnlyList<(int Step, DateTimeOffset At)> Marks { get; }

    /// <summary>A run that begins now.</summary>
    public static ProcessingRun Begin(ProcessingPlan plan, DateTimeOffset now) => new(plan, [(0, now)]);

    /// <summary>The run with a later step begun by hand, early or late.</summary>
    /// <param name="step">From zero; later than all steps begun before.</param>
    /// <param name="now">The instant.</param>
    /// <exception cref="RefusalException">No such step, a step that is already behind, or a clock that runs backwards.</exception>
    public ProcessingRun BeginStep(int step, DateTimeOffset now)
    {
        Guard.Within(step, 0, Plan.Steps.Count - 1, "the step");
        var last = Marks[^1];
        if (step <= last.Step)
        {
            throw new RefusalException($"Step {step + 1} is already behind; the next is step {last.Step + 2}.");
        }

        Since(last.At, now);
        return new(Plan, [.. Marks, (step, now)]);
    }

    /// <summary>The moment now.</summary>
    /// <exception cref="RefusalException">The clock shows an instant before the step began, or months after it.</exception>
    public RunMoment At(DateTimeOffset now)
    {
        var last = Marks[^1];
        return Plan.SinceStep(last.Step, Since(last.At, now));
    }

    /// <summary>Which of several runs changes next, for one pair of hands; null when all are done.</summary>
    /// <exception cref="RefusalException">As <see cref="At"/>.</exception>
    public static ProcessingRun? Soonest(IReadOnlyList<ProcessingRun> runs, DateTimeOffset now) => runs
        .Select(run => (Run: run, Moment: run.At(now)))
        .Where(each => each.Moment.Cue != RunCue.Done)
        .OrderBy(each => each.Moment.CueLeft)
        .Select(each => each.Run)
        .FirstOrDefault();

    private static Duration Since(DateTimeOffset begun, DateTimeOffset now)
    {
        var seconds = (now - begun).TotalSeconds;
        return seconds >= 0
            ? Duration.FromSeconds(seconds)
            : throw new RefusalException("The clock shows a time before this bath began, so it was probably set back; say how long the sheet has been in.");
    }
}
