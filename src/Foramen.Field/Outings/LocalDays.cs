using Foramen.Field.Time;

namespace Foramen.Field.Outings;

/// <summary>Days as the device's owner lives them; a day in which the clocks change has 23 or 25 hours.</summary>
public static class LocalDays
{
    /// <summary>When a date begins.</summary>
    public static DateTimeOffset Begin(DateOnly date, Clock clock)
    {
        // The offset at midnight is that of an instant near it; asked twice, because a first guess may lie on the other side of a change.
        var midnight = date.ToDateTime(TimeOnly.MinValue);
        var guess = clock.At(new DateTimeOffset(midnight, TimeSpan.Zero));
        guess = clock.At(new DateTimeOffset(midnight, guess.Offset));
        return new DateTimeOffset(midnight, guess.Offset);
    }

    /// <summary>When it ends: the next one's beginning.</summary>
    public static DateTimeOffset End(DateOnly date, Clock clock) => Begin(date.AddDays(1), clock);
}
