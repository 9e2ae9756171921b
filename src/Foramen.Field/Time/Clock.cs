namespace Foramen.Field.Time;

/// <summary>Now, by the device's clock, with the offset from UTC that its owner lives by.</summary>
public sealed class Clock(TimeProvider time, IZone zone)
{
    /// <summary>Where timers come from.</summary>
    public TimeProvider Time { get; } = time;

    /// <summary>Now, cut to milliseconds, as an entry keeps it.</summary>
    public DateTimeOffset Now
    {
        get
        {
            var milliseconds = Time.GetUtcNow().ToUnixTimeMilliseconds();
            return At(DateTimeOffset.FromUnixTimeMilliseconds(milliseconds));
        }
    }

    /// <summary>An instant with the local offset of that instant.</summary>
    public DateTimeOffset At(DateTimeOffset instant) => instant.ToOffset(zone.OffsetAt(instant));
}
