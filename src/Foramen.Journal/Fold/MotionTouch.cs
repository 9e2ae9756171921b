namespace Foramen.Journal.Fold;

/// <summary>A moving region began to move, or stopped.</summary>
/// <param name="Motion">The region.</param>
/// <param name="Started">Whether it began.</param>
/// <param name="At">When the entry was written, by the device's clock.</param>
/// <param name="SecondsAgo">How long before that it happened, s.</param>
public sealed record MotionTouch(Ulid Motion, bool Started, DateTimeOffset At, double SecondsAgo)
{
    /// <summary>When it happened, by the device's clock.</summary>
    public DateTimeOffset Happened => At.AddSeconds(-SecondsAgo);
}
