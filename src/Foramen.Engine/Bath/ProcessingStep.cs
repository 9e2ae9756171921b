using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>One bath of a processing run. Immutable.</summary>
public sealed record ProcessingStep
{
    private ProcessingStep(ProcessingBath bath, Duration time, Duration drain, Agitation agitation)
    {
        Bath = bath;
        Time = time;
        Drain = drain;
        Agitation = agitation;
    }

    /// <summary>Which.</summary>
    public ProcessingBath Bath { get; }

    /// <summary>From pouring in to the last drop out.</summary>
    public Duration Time { get; }

    /// <summary>Of that, the pouring out at the end.</summary>
    public Duration Drain { get; }

    /// <summary>When the tank is moved.</summary>
    public Agitation Agitation { get; }

    /// <summary>A step.</summary>
    /// <param name="bath">Which.</param>
    /// <param name="time">2 s to 12 h.</param>
    /// <param name="agitation">When the tank is moved.</param>
    /// <param name="drain">Pouring out, part of the time; 5 s where null, at most half the time.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static ProcessingStep From(ProcessingBath bath, Duration time, Agitation agitation, Duration? drain = null)
    {
        Guard.Within(time.Seconds, 2, 43_200, "the time in a bath", "s");
        var pouring = drain?.Seconds ?? Math.Min(5, time.Seconds / 2);
        Guard.Within(pouring, 0, time.Seconds / 2, "the time for pouring out", "s");
        return new(bath, time, Duration.FromSeconds(pouring), agitation);
    }
}
