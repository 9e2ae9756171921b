namespace Foramen.Journal.Entries;

/// <summary>
/// Where an entry stands in the one order of a set of entries: by effective instant, then device, sequence, id. The effective instant of an
/// entry is the latest instant among its own and all those of its device with the same or a smaller sequence number, so that a clock set back
/// never reorders one device's entries. A function of the set only.
/// </summary>
/// <param name="EffectiveUnixMilliseconds">The effective instant.</param>
/// <param name="Device">The device.</param>
/// <param name="Sequence">The device's own number.</param>
/// <param name="Id">The entry.</param>
public readonly record struct EntryOrder(long EffectiveUnixMilliseconds, DeviceId Device, long Sequence, Ulid Id) : IComparable<EntryOrder>
{
    /// <inheritdoc/>
    public int CompareTo(EntryOrder other)
    {
        var by = EffectiveUnixMilliseconds.CompareTo(other.EffectiveUnixMilliseconds);
        by = by != 0 ? by : Device.CompareTo(other.Device);
        by = by != 0 ? by : Sequence.CompareTo(other.Sequence);
        return by != 0 ? by : Id.CompareTo(other.Id);
    }

    /// <summary>Whether the left comes first.</summary>
    public static bool operator <(EntryOrder left, EntryOrder right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left comes first, or both are the same.</summary>
    public static bool operator <=(EntryOrder left, EntryOrder right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left comes last.</summary>
    public static bool operator >(EntryOrder left, EntryOrder right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left comes last, or both are the same.</summary>
    public static bool operator >=(EntryOrder left, EntryOrder right) => left.CompareTo(right) >= 0;
}
