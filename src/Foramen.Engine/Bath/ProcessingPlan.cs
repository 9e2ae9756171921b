using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>The baths of a sheet in their order. What to do at any moment is a function of the time elapsed alone. Immutable.</summary>
public sealed record ProcessingPlan
{
    private ProcessingPlan(IReadOnlyList<ProcessingStep> steps, IReadOnlyList<string> warnings)
    {
        Steps = steps;
        Warnings = warnings;
    }

    /// <summary>The steps in their order.</summary>
    public IReadOnlyList<ProcessingStep> Steps { get; }

    /// <summary>Sentences for the user; empty when all is well.</summary>
    public IReadOnlyList<string> Warnings { get; }

    /// <summary>All steps together.</summary>
    public Duration Time => Duration.FromSeconds(Steps.Sum(step => step.Time.Seconds));

    /// <summary>A plan of these steps.</summary>
    /// <exception cref="RefusalException">No developer at the start, baths out of order, or more than a hundred.</exception>
    public static ProcessingPlan From(IReadOnlyList<ProcessingStep> steps)
    {
        Guard.Within(steps.Count, 1, 100, "the number of baths");
        if (steps[0].Bath != ProcessingBath.Developer)
        {
            throw new RefusalException($"The {Name(steps[0].Bath)} comes first; a run begins with the developer.");
        }

        for (var i = 1; i < steps.Count; i++)
        {
            if (Rank(steps[i].Bath) < Rank(steps[i - 1].Bath))
            {
                throw new RefusalException(
                    $"The {Name(steps[i].Bath)} comes after the {Name(steps[i - 1].Bath)}; the order is developer, stop bath or rinse, fixer, wash.");
            }
        }

        var warnings = new List<string>();
        var baths = steps.Select(step => step.Bath).ToList();
        if (!baths.Contains(ProcessingBath.Fix))
        {
            warnings.Add("There is no fixer: keep the sheet in the dark until it is fixed.");
        }
        else if (!baths.Contains(ProcessingBath.Stop) && !baths.Contains(ProcessingBath.Rinse))
        {
            warnings.Add("Nothing comes between developer and fixer: the fixer will die sooner and stains are likely.");
        }

        if (!baths.Contains(ProcessingBath.Wash))
        {
            warnings.Add("There is no wash: wash the sheet soon, or it will fade.");
        }

        return new(steps.ToArray(), warnings);
    }

    /// <summary>
    /// The usual run in a camera or box that is its own tank: the developer moved for 10 s and then every 10 s, 20 s of stop, 4 min of fixer,
    /// washes of 30 s (common practice, no source).
    /// </summary>
    /// <param name="develop">Development time, 2 s to 12 h.</param>
    /// <param name="fix">Fixing time; 4 min where null.</param>
    /// <param name="washChanges">0 to 50; 4 by default.</param>
    /// <param name="washEach">Each change; 30 s where null.</param>
    /// <param name="rinse">A rinse in water in place of the stop bath.</param>
    /// <param name="motion">How the tank is moved.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static ProcessingPlan Usual(
        Duration develop,
        Duration? fix = null,
        int washChanges = 4,
        Duration? washEach = null,
        bool rinse = false,
        AgitationMotion motion = AgitationMotion.Tilt)
    {
        Guard.Within(washChanges, 0, 50, "the changes of wash water");
        var often = Moved(10, 10, 3);
        return From(
        [
            ProcessingStep.From(ProcessingBath.Developer, develop, often),
            ProcessingStep.From(rinse ? ProcessingBath.Rinse : ProcessingBath.Stop, Duration.FromSeconds(20), Moved(0, 10, 10)),
            ProcessingStep.From(ProcessingBath.Fix, fix ?? Duration.FromMinutes(4), Moved(30, 30, 5)),
            .. Enumerable.Repeat(ProcessingStep.From(ProcessingBath.Wash, washEach ?? Duration.FromSeconds(30), often), washChanges),
        ]);

        Agitation Moved(double continuous, double every, double stroke) => Agitation.From(
            motion, Duration.FromSeconds(continuous), Duration.FromSeconds(every), Duration.FromSeconds(stroke));
    }

    /// <summary>The moment after a time since the start, each step following the one before without a gap.</summary>
    public RunMoment At(Duration elapsed) => SinceStep(0, elapsed);

    /// <summary>The moment after a time since this step began, later steps following without a gap.</summary>
    /// <param name="index">Of the step that began, from zero.</param>
    /// <param name="elapsed">Since then.</param>
    /// <exception cref="RefusalException">No such step.</exception>
    public RunMoment SinceStep(int index, Duration elapsed)
    {
        Guard.Within(index, 0, Steps.Count - 1, "the step");
        var left = elapsed.Seconds;
        while (index < Steps.Count && left >= Steps[index].Time.Seconds)
        {
            left -= Steps[index].Time.Seconds;
            index++;
        }

        return index < Steps.Count
            ? Moment(index, left)
            : new RunMoment { Index = index, Step = null, Elapsed = Duration.FromSeconds(left), Left = default, Over = default, Cue = RunCue.Done, CueLeft = default };
    }

    /// <summary>The moment after a time in this step, which lasts until the next is begun by hand.</summary>
    /// <param name="index">Of the step, from zero.</param>
    /// <param name="elapsed">Since it began; beyond its time the step is over its time.</param>
    /// <exception cref="RefusalException">No such step.</exception>
    public RunMoment InStep(int index, Duration elapsed)
    {
        Guard.Within(index, 0, Steps.Count - 1, "the step");
        return Moment(index, elapsed.Seconds);
    }

    private RunMoment Moment(int index, double elapsed)
    {
        var step = Steps[index];
        var left = step.Time.Seconds - elapsed;
        var untilDrain = left - step.Drain.Seconds;
        var (move, cueFor) = step.Agitation.At(Duration.FromSeconds(elapsed));
        var pouring = untilDrain <= 0;
        return new RunMoment
        {
            Index = index,
            Step = step,
            Elapsed = Duration.FromSeconds(elapsed),
            Left = Duration.FromSeconds(Math.Max(0, left)),
            Over = Duration.FromSeconds(Math.Max(0, -left)),
            Cue = pouring ? RunCue.PourOut : move ? RunCue.Agitate : RunCue.Still,
            CueLeft = Duration.FromSeconds(pouring ? Math.Max(0, left) : Math.Min(cueFor.Seconds, untilDrain)),
        };
    }

    private static int Rank(ProcessingBath bath) => bath switch
    {
        ProcessingBath.Developer => 0,
        ProcessingBath.Rinse or ProcessingBath.Stop => 1,
        ProcessingBath.Fix => 2,
        ProcessingBath.Wash => 3,
        _ => throw new ArgumentOutOfRangeException(nameof(bath)),
    };

    private static string Name(ProcessingBath bath) => bath switch
    {
        ProcessingBath.Developer => "developer",
        ProcessingBath.Rinse => "rinse",
        ProcessingBath.Stop => "stop bath",
        ProcessingBath.Fix => "fixer",
        ProcessingBath.Wash => "wash",
        _ => throw new ArgumentOutOfRangeException(nameof(bath)),
    };
}
