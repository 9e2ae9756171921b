using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// When to move the tank, as data: without pause for <see cref="Continuous"/>, then for <see cref="Stroke"/> every
/// <see cref="Every"/>, counted from the end of the first. Immutable.
/// </summary>
public sealed record Agitation
{
    private Agitation(Duration continuous, Duration every, Duration stroke)
    {
        Continuous = continuous;
        Every = every;
        Stroke = stroke;
    }

    /// <summary>At first, without pause.</summary>
    public Duration Continuous { get; }

    /// <summary>From the start of one stroke to the start of the next.</summary>
    public Duration Every { get; }

    /// <summary>How long a stroke lasts; as long as <see cref="Every"/> for no pause at all.</summary>
    public Duration Stroke { get; }

    /// <summary>A way of agitating.</summary>
    /// <param name="continuous">0 to 1 h.</param>
    /// <param name="every">1 s to 1 h.</param>
    /// <param name="stroke">0.5 s up to <paramref name="every"/>.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static Agitation From(Duration continuous, Duration every, Duration stroke)
    {
        Guard.Within(continuous.Seconds, 0, 3600, "the first agitation", "s");
        Guard.Within(every.Seconds, 1, 3600, "the time between two strokes", "s");
        Guard.Within(stroke.Seconds, 0.5, every.Seconds, "the length of a stroke", "s");
        return new(continuous, every, stroke);
    }

    /// <summary>
    /// The usual way in a camera or box that is its own tank (common practice, no source): developer and each change of wash water moved for 10 s and then
    /// 3 s every 10 s, stop bath or rinse without pause, fixer for 30 s and then 5 s every 30 s.
    /// </summary>
    public static Agitation Usual(ProcessingBath bath) => bath switch
    {
        ProcessingBath.Developer or ProcessingBath.Wash => Moved(10, 10, 3),
        ProcessingBath.Stop or ProcessingBath.Rinse => Moved(0, 10, 10),
        ProcessingBath.Fix => Moved(30, 30, 5),
        _ => throw new ArgumentOutOfRangeException(nameof(bath)),
    };

    /// <summary>Whether to move the tank after a time in the bath, and how long that goes on; the longest duration for ever.</summary>
    public (bool Move, Duration For) At(Duration elapsed)
    {
        if (Stroke.Seconds >= Every.Seconds)
        {
            return (true, Duration.FromSeconds(Duration.Max));
        }

        var after = elapsed.Seconds - Continuous.Seconds;
        if (after < 0)
        {
            return (true, Duration.FromSeconds(-after));
        }

        // The first stroke comes one interval after the continuous part, which has just moved the liquid.
        var phase = after % Every.Seconds;
        return after >= Every.Seconds && phase < Stroke.Seconds
            ? (true, Duration.FromSeconds(Stroke.Seconds - phase))
            : (false, Duration.FromSeconds(Every.Seconds - phase));
    }

    private static Agitation Moved(double continuous, double every, double stroke)
        => From(Duration.FromSeconds(continuous), Duration.FromSeconds(every), Duration.FromSeconds(stroke));
}
