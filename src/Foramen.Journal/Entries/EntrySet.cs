using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Foramen.Journal.Entries;

/// <summary>
/// The journal: an immutable set of entries. Merging is set union, so it is idempotent, commutative and associative, and safe to repeat.
/// The same id with another content is a named conflict: every version is kept, and the one with the smallest hash counts everywhere.
/// </summary>
public sealed class EntrySet
{
    private readonly ImmutableDictionary<Ulid, Entry> counting;
    private readonly ImmutableDictionary<Ulid, ImmutableList<Entry>> others;
    private readonly ImmutableDictionary<DeviceId, DeviceTrack> tracks;
    private IReadOnlyList<OrderedEntry>? inOrder;
    private IReadOnlyList<EntryConflict>? conflicts;

    private EntrySet(
        ImmutableDictionary<Ulid, Entry> counting,
        ImmutableDictionary<Ulid, ImmutableList<Entry>> others,
        ImmutableDictionary<DeviceId, DeviceTrack> tracks)
    {
        this.counting = counting;
        this.others = others;
        this.tracks = tracks;
    }

    /// <summary>No entries.</summary>
    public static EntrySet Empty { get; } = new(
        ImmutableDictionary<Ulid, Entry>.Empty,
        ImmutableDictionary<Ulid, ImmutableList<Entry>>.Empty,
        ImmutableDictionary<DeviceId, DeviceTrack>.Empty);

    /// <summary>How many entries count (one for each id).</summary>
    public int Count => counting.Count;

    /// <summary>Every entry, also those that only stand in a conflict. In no order.</summary>
    public IEnumerable<Entry> All => counting.Values.Concat(others.Values.SelectMany(list => list));

    /// <summary>The entries that count, in the one order that every device agrees on.</summary>
    public IReadOnlyList<OrderedEntry> InOrder => inOrder ??= Ordered();

    /// <summary>What cannot all be right, in order of id.</summary>
    public IReadOnlyList<EntryConflict> Conflicts => conflicts ??= FindConflicts();

    /// <summary>A set of these entries.</summary>
    public static EntrySet Of(IEnumerable<Entry> entries) => Empty.Union(entries);

    /// <summary>The entry of this id that counts, or null.</summary>
    public Entry? Find(Ulid id) => counting.GetValueOrDefault(id);

    /// <summary>Whether this very entry is in the set, counting or not.</summary>
    public bool Contains(Entry entry)
        => (counting.TryGetValue(entry.Id, out var known) && known.Equals(entry))
        || (others.TryGetValue(entry.Id, out var more) && more.Contains(entry));

    /// <summary>This set and one more entry.</summary>
    public EntrySet With(Entry entry) => Union([entry]);

    /// <summary>All entries of this set and these.</summary>
    public EntrySet Union(IEnumerable<Entry> entries)
    {
        var toCounting = counting.ToBuilder();
        var toOthers = others.ToBuilder();
        var toTracks = tracks.ToBuilder();
        var changed = false;
        var displaced = false;
        foreach (var entry in entries)
        {
            if (!toCounting.TryGetValue(entry.Id, out var known))
            {
                toCounting.Add(entry.Id, entry);
                toTracks[entry.Device] = DeviceTrack.With(toTracks.GetValueOrDefault(entry.Device), entry);
                changed = true;
            }
            else if (!known.Equals(entry))
            {
                var rest = toOthers.GetValueOrDefault(entry.Id) ?? [];
                if (rest.Contains(entry))
                {
                    continue;
                }

                var all = rest.Add(entry).Add(known);
                var first = all.Aggregate((a, b) => CountsBefore(b, a, all) ? b : a);
                toCounting[entry.Id] = first;
                toOthers[entry.Id] = all.Remove(first);
                displaced |= !first.Equals(known);
                changed = true;
            }
        }

        if (!changed)
        {
            return this;
        }

        var counted = toCounting.ToImmutable();
        // A displaced entry may have carried the largest number or instant of its device.
        var tracked = displaced ? Track(counted.Values) : toTracks.ToImmutable();
        return new EntrySet(counted, toOthers.ToImmutable(), tracked);
    }

    /// <summary>
    /// Where a new entry would stand, if it is its device's next and would stand after all that is here; null if it would not, or is known.
    /// </summary>
    internal EntryOrder? OrderAtEnd(Entry entry, EntryOrder? last)
    {
        if (counting.ContainsKey(entry.Id))
        {
            return null;
        }

        var instant = entry.At.ToUnixTimeMilliseconds();
        if (tracks.TryGetValue(entry.Device, out var track))
        {
            if (entry.Sequence <= track.LastSequence)
            {
                return null;
            }

            instant = Math.Max(instant, track.LatestUnixMilliseconds);
        }

        var order = new EntryOrder(instant, entry.Device, entry.Sequence, entry.Id);
        return last is { } end && order <= end ? null : order;
    }

    // A full entry goes before a shortened copy of an entry that is here; else the smallest hash. Both depend on the set alone.
    private static bool CountsBefore(Entry one, Entry other, ImmutableList<Entry> all)
    {
        var oneIsCopy = IsCopyOfOneOf(one, all);
        var otherIsCopy = IsCopyOfOneOf(other, all);
        return oneIsCopy != otherIsCopy ? otherIsCopy : string.CompareOrdinal(one.Hash, other.Hash) < 0;
    }

    private static bool IsCopyOfOneOf(Entry entry, IEnumerable<Entry> all)
        => entry.RedactedFrom is { } full && all.Any(candidate => candidate.Hash == full);

    private static ImmutableDictionary<DeviceId, DeviceTrack> Track(IEnumerable<Entry> entries)
    {
        var tracks = ImmutableDictionary.CreateBuilder<DeviceId, DeviceTrack>();
        foreach (var entry in entries)
        {
            tracks[entry.Device] = DeviceTrack.With(tracks.GetValueOrDefault(entry.Device), entry);
        }

        return tracks.ToImmutable();
    }

    private OrderedEntry[] Ordered()
    {
        var byDevice = new Dictionary<DeviceId, List<Entry>>();
        foreach (var entry in counting.Values)
        {
            (CollectionsMarshal.GetValueRefOrAddDefault(byDevice, entry.Device, out _) ??= []).Add(entry);
        }

        // Within a device the order is that of its numbers, and effective instants do not fall; so the devices' lists are merged.
        var lists = byDevice.Values.Select(OrderedDevice).ToList();
        while (lists.Count > 1)
        {
            lists.Add(MergedTwo(lists[0], lists[1]));
            lists.RemoveRange(0, 2);
        }

        return lists.Count == 0 ? [] : lists[0];
    }

    private static OrderedEntry[] OrderedDevice(List<Entry> list)
    {
        var own = list.ToArray();
        Array.Sort(Array.ConvertAll(own, entry => entry.Sequence), own);
        var ordered = new OrderedEntry[own.Length];
        var effective = long.MinValue;
        for (var i = 0; i < own.Length;)
        {
            // Entries that share a number share the instant too; otherwise it would depend on which id came first.
            var end = i;
            while (end < own.Length && own[end].Sequence == own[i].Sequence)
            {
                effective = Math.Max(effective, own[end].At.ToUnixTimeMilliseconds());
                end++;
            }

            if (end - i > 1)
            {
                Array.Sort(own, i, end - i, Comparer<Entry>.Create(static (a, b) => a.Id.CompareTo(b.Id)));
            }

            for (; i < end; i++)
            {
                ordered[i] = new OrderedEntry(new EntryOrder(effective, own[i].Device, own[i].Sequence, own[i].Id), own[i]);
            }
        }

        return ordered;
    }

    private static OrderedEntry[] MergedTwo(OrderedEntry[] one, OrderedEntry[] other)
    {
        var merged = new OrderedEntry[one.Length + other.Length];
        for (int i = 0, a = 0, b = 0; i < merged.Length; i++)
        {
            merged[i] = b == other.Length || (a < one.Length && one[a].Order < other[b].Order) ? one[a++] : other[b++];
        }

        return merged;
    }

    private List<EntryConflict> FindConflicts()
    {
        var found = new List<EntryConflict>();
        foreach (var (id, rest) in others.OrderBy(pair => pair.Key))
        {
            var all = rest.Insert(0, counting[id]);
            var rivals = all.Where(entry => !IsCopyOfOneOf(entry, all)).OrderBy(entry => entry.Hash, StringComparer.Ordinal).ToList();
            if (rivals.Count > 1)
            {
                found.Add(new EntryConflict(
                    EntryConflictKind.SameIdOtherContent,
                    rivals,
                    $"Entry {id} exists in {rivals.Count} versions; the first by hash counts, and all are kept."));
            }
        }

        foreach (var clash in counting.Values.GroupBy(entry => (entry.Device, entry.Sequence)).Where(group => group.Skip(1).Any())
                     .OrderBy(group => group.Key.Device).ThenBy(group => group.Key.Sequence))
        {
            found.Add(new EntryConflict(
                EntryConflictKind.SequenceUsedTwice,
                [.. clash.OrderBy(entry => entry.Id)],
                $"Device {clash.Key.Device} used its number {clash.Key.Sequence} more than once; it was probably copied or restored."));
        }

        return found;
    }

    private sealed record DeviceTrack(long LastSequence, long LatestUnixMilliseconds)
    {
        public static DeviceTrack With(DeviceTrack? track, Entry entry)
        {
            var instant = entry.At.ToUnixTimeMilliseconds();
            return track is null
                ? new DeviceTrack(entry.Sequence, instant)
                : new DeviceTrack(Math.Max(track.LastSequence, entry.Sequence), Math.Max(track.LatestUnixMilliseconds, instant));
        }
    }
}
