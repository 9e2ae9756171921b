using Foramen.Journal.Entries;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Faults;

/// <summary>A device that keeps its entries in memory.</summary>
internal sealed class MemoryDevice : ISyncDevice
{
    private readonly List<(Entry Entry, string? Origin)> stored = [];
    private readonly HashSet<string> known = [];

    public SyncMark Mark { get; private set; } = SyncMark.Never;

    public IEnumerable<string> Hashes => known.Order(StringComparer.Ordinal);

    public void Write(IEnumerable<Entry> entries) => Keep(entries, null);

    public Task<IReadOnlyList<UnsentEntry>> UnsentAsync(string origin, long afterPosition, int most)
        => Task.FromResult<IReadOnlyList<UnsentEntry>>(
        [
            .. stored.Skip((int)afterPosition).Select((one, i) => (one.Entry, one.Origin, Position: afterPosition + i + 1)).Where(one => one.Origin != origin)
                .Take(most).Select(one => new UnsentEntry(one.Position, Writing.Line(one.Entry))),
        ]);

    public Task TakeInAsync(IReadOnlyList<BatchLine> lines, string origin)
    {
        Keep(lines.Select(line => line.Entry), origin);
        return Task.CompletedTask;
    }

    public Task SaveMarkAsync(SyncMark mark)
    {
        Mark = mark;
        return Task.CompletedTask;
    }

    private void Keep(IEnumerable<Entry> entries, string? origin) => stored.AddRange(entries.Where(entry => known.Add(entry.Hash)).Select(entry => (entry, origin)));
}
