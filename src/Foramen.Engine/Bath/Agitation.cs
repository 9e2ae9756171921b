using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// When to move the tank, as data: without pause for <see cref="Continuous"/>, then for <see cref="Stroke"/> every
/// <see cref="Every"/>, counted from the end of the first. Immutable.
/// </summary>
public sealed record Agitation
{
    private Agitation(AgitationMotion motion, Duration continuous, Duration every, Duration stroke)
    {
        Motion = motion;
        Continuous = continuous;
        Every = every;
        Stroke = stroke;
    }

    /// <summary>What is done.</summary>
    public AgitationMotion Motion { get; }

    /// <summary>At first, without pause.</summary>
    public Duration Continuous { get; }

    /// <summary>From the start of one stroke to the start of the next.</summary>
    public Duration Every { get; }

    /// <summary>How long a stroke lasts; as long as <see cref="Every"/> for no pause at all.</summary>
    public Duration Stroke { get; }

    /// <summary>A way of agitating.</summary>
    /// <param name="motion">What is done.</param>
    /// <param name="continuous">0 to 1 h.</param>
    /// <param name="every">1 s to 1 h.</param>
    /// <param name="stroke">0.5 s up to <paramref name="every"/>.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static Agitation From(AgitationMotion motion, Duration continuous, Duration every, Duration stroke)
    {
        Guard.Within(continuous.Seconds, 0, 3600, "the first agitation", "s");
        Guard.Within(every.Seconds, 1, 3600, "the time between two strokes", "s");
        Guard.Within(stroke.Seconds, 0.5, every.Seconds, "the length of a stroke", "s");
        return new(motion, continuous, every, stroke);
    }

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
}
