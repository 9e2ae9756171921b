using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>One flash.</summary>
/// <param name="Started">When it began; null if only its end was written down.</param>
/// <param name="Finished">When it ended; null while it runs.</param>
public sealed record FlashGiven(Stamped<FlashStarted>? Started, Stamped<FlashFinished>? Finished)
{
    /// <summary>Whether it still runs.</summary>
    public bool Running => Finished is null;

    /// <summary>Whether the clock was set back while it ran, so that the time is not known from it.</summary>
    public bool ClockWentBack => Started is not null && Finished is not null && Finished.At < Started.At;

    /// <summary>Time given: as stated, else between the entries; null where neither is known.</summary>
    public double? GivenSeconds => Finished?.Body.GivenSeconds
        ?? (Started is not null && Finished is not null && !ClockWentBack ? (Finished.At - Started.At).TotalSeconds : null);

    /// <summary>Time since it began, s; zero if the clock stands before its beginning.</summary>
    public double ElapsedSeconds(DateTimeOffset now) => Started is null ? 0 : Math.Max(0, (now - Started.At).TotalSeconds);
}
