using System.Text;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

/// <summary>A device's store in memory; may die before any of its writes, and be set up again with an empty store.</summary>
internal sealed class ModelDevice : ISyncDevice
{
    private readonly List<(Entry Entry, string? Origin)> stored = [];

    /// <summary>How many more writes succeed; negative: all.</summary>
    public int DiesAfter { get; set; } = -1;

    public SyncMark Mark { get; private set; } = SyncMark.Never;

    public IEnumerable<Entry> Entries => stored.Select(one => one.Entry);

    public void Write(Entry entry) => stored.Add((entry, null));

    /// <summary>Takes in another's journal file: the way without a network.</summary>
    public void Import(ModelDevice other) => Keep(JournalFile.Read(JournalFile.Write(other.Entries)).Entries, null);

    public Task<IReadOnlyList<UnsentEntry>> UnsentAsync(string origin, long afterPosition, int most)
        => Task.FromResult<IReadOnlyList<UnsentEntry>>(
        [
            .. stored.Select((one, i) => (one.Entry, one.Origin, Position: i + 1))
                .Where(one => one.Position > afterPosition && one.Origin != origin)
                .Take(most)
                .Select(one => new UnsentEntry(one.Position, Encoding.UTF8.GetBytes(EntryLine.Write(one.Entry)))),
        ]);

    public Task TakeInAsync(IReadOnlyList<BatchLine> lines, string origin)
    {
        Live();
        Keep(lines.Select(line => line.Entry), origin);
        return Task.CompletedTask;
    }

    public Task SaveMarkAsync(SyncMark mark)
    {
        Live();
        // Through its text, as a store keeps it.
        Mark = SyncMark.FromJson(mark.ToJson());
        return Task.CompletedTask;
    }

    private void Keep(IEnumerable<Entry> entries, string? origin)
    {
        foreach (var entry in entries.Where(entry => !stored.Exists(one => one.Entry.Equals(entry))))
        {
            stored.Add((entry, origin));
        }
    }

    private void Live()
    {
        if (DiesAfter == 0)
        {
            throw new DeviceDiedException();
        }

        DiesAfter--;
    }
}
