namespace Foramen.Field.Time;

/// <summary>The device's time zone.</summary>
public interface IZone
{
    /// <summary>The local offset from UTC at an instant, whole minutes.</summary>
    TimeSpan OffsetAt(DateTimeOffset instant);
}
