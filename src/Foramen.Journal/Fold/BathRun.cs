using System.Collections.Immutable;
using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>One processing run of a sheet.</summary>
public sealed record BathRun
{
    /// <summary>How it began; null if only its steps were written down.</summary>
    public Stamped<BathStarted>? Started { get; init; }

    /// <summary>Its steps so far, oldest first; the last one is the present one.</summary>
    public ImmutableList<Stamped<BathStep>> Steps { get; init; } = [];

    /// <summary>How it ended; null while it runs.</summary>
    public Stamped<BathFinished>? Finished { get; init; }

    /// <summary>How long a step took, s, or has taken up to now; zero where the clock was set back meanwhile.</summary>
    /// <param name="index">Which step, from 0.</param>
    /// <param name="now">Now, by this device's clock.</param>
    public double SecondsIn(int index, DateTimeOffset now) => Math.Max(0, (EndOf(index, now) - Begin(Steps[index])).TotalSeconds);

    /// <summary>Where the run stands.</summary>
    /// <param name="now">Now, by this device's clock.</param>
    /// <returns>Null before the first step and after the end.</returns>
    public BathPosition? PositionAt(DateTimeOffset now)
    {
        if (Finished is not null || Steps.IsEmpty)
        {
            return null;
        }

        var index = Steps.Count - 1;
        var step = Steps[index];
        return new BathPosition(index, step.Body.Step, SecondsIn(index, now), now < step.At);
    }

    private static DateTimeOffset Begin(Stamped<BathStep> step) => Before(step.At, step.Body.SecondsAgo);

    private static DateTimeOffset Before(DateTimeOffset at, double? seconds) => at.AddSeconds(-(seconds ?? 0));

    private DateTimeOffset EndOf(int index, DateTimeOffset now)
        => index + 1 < Steps.Count ? Begin(Steps[index + 1])
        : Finished is { } end ? Before(end.At, end.Body.SecondsAgo)
        : now;
}
