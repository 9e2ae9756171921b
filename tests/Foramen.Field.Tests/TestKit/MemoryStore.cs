using Foramen.Field.Storage;

namespace Foramen.Field.Tests.TestKit;

/// <summary>The store in memory, with the promises of the real one and faults on request. Several sessions may share one, as tabs do.</summary>
internal sealed class MemoryStore : IJournalStore
{
    private readonly List<StoredLine> lines = [];
    private string? device;
    private long sequence;

    public event Action? AppendedElsewhere;

    /// <summary>Refuses the next appends for this reason.</summary>
    public StoreRefusal? Refuse { get; set; }

    public IReadOnlyList<StoredLine> Lines => lines;

    public long Sequence => sequence;

    public void AddRaw(string line) => lines.Add(new StoredLine(lines.Count + 1, line));

    public void Change(int index, string line) => lines[index] = lines[index] with { Line = line };

    public void TellOtherTabs() => AppendedElsewhere?.Invoke();

    public Task<StoredJournal> OpenAsync(string newDevice)
    {
        if (Refuse == StoreRefusal.Unavailable)
        {
            throw new StoreRefusedException(StoreRefusal.Unavailable, "test");
        }

        device ??= newDevice;
        return Task.FromResult(new StoredJournal(device, sequence, [.. lines]));
    }

    public Task<StoredJournal> ReadAfterAsync(long position)
        => Task.FromResult(new StoredJournal("", sequence, [.. lines.Where(line => line.Position > position)]));

    public Task<long?> AppendAsync(long firstSequence, IReadOnlyList<string> added, string origin = "")
    {
        if (Refuse is { } refusal)
        {
            throw new StoreRefusedException(refusal, "test");
        }

        if (firstSequence != 0 && firstSequence != sequence + 1)
        {
            return Task.FromResult<long?>(null);
        }

        foreach (var line in added)
        {
            lines.Add(new StoredLine(lines.Count + 1, line, origin));
        }

        sequence = firstSequence == 0 ? sequence : sequence + added.Count;
        return Task.FromResult<long?>(lines.Count);
    }

    public Dictionary<string, string> Notes { get; } = [];

    public Task<string> ReadNoteAsync(string name) => Task.FromResult(Notes.GetValueOrDefault(name, ""));

    public Task KeepNoteAsync(string name, string text)
    {
        Notes[name] = text;
        return Task.CompletedTask;
    }

    public Task<StoreHealth> HealthAsync() => Task.FromResult(new StoreHealth(false, 1e6, 1e9));

    public Task<StoreHealth> PersistAsync() => Task.FromResult(new StoreHealth(true, 1e6, 1e9));
}
