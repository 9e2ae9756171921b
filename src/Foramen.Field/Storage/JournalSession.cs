using System.Security.Cryptography;
using Foramen.Engine.Quantities;
using Foramen.Field.Time;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;

namespace Foramen.Field.Storage;

/// <summary>
/// The journal of this device while the app is open: what is stored, folded into a <see cref="Ledger"/>, and the only way to write. What is in
/// the ledger is stored: an entry enters it only after the store has acknowledged it.
/// </summary>
public sealed class JournalSession(IJournalStore store, Clock clock) : IDisposable
{
    private const int MaxAttempts = 5;

    /// <summary>More lines than these are read on trust, so that nobody waits for their hashes, and checked after that.</summary>
    private const int TrustedFrom = 500;

    // Some milliseconds in a browser, then the page has its turn.
    private const int CheckedAtOnce = 100;
    private static readonly TimeSpan PageTurn = TimeSpan.FromMilliseconds(5);

    private readonly CancellationTokenSource ending = new();

    private readonly SemaphoreSlim gate = new(1, 1);
    private readonly List<string> unreadable = [];
    private readonly List<KeptEntry> kept = [];
    private Task? opening;
    private long lastPosition;
    private long lastSequence;

    /// <summary>Everything on this device, folded. Empty until <see cref="OpenAsync"/> has finished.</summary>
    public Ledger Ledger { get; private set; } = Ledger.Empty;

    /// <summary>This device; null until opened.</summary>
    public DeviceId? Device { get; private set; }

    /// <summary>Whether the journal has been read.</summary>
    public bool IsOpen => Device is not null;

    /// <summary>Why the store could not be opened; null where it could.</summary>
    public StoreRefusedException? Refused { get; private set; }

    /// <summary>Complaints about stored lines that could not be read; the lines stay where they are.</summary>
    public IReadOnlyList<string> Unreadable => unreadable;

    /// <summary>Ends when every line of the start has been compared with its hash; what does not fit is by then out of the ledger and among <see cref="Unreadable"/>.</summary>
    public Task Checked { get; private set; } = Task.CompletedTask;

    /// <summary>Rises when the journal was filled from nothing behind a page that had begun with nothing, so that the page is made anew.</summary>
    public int Beginning { get; private set; }

    /// <summary>The ledger has changed, here or in another tab.</summary>
    public event Action? Changed;

    /// <summary>Reads the journal, once; later calls wait for the first. Does not throw: see <see cref="Refused"/>.</summary>
    public Task OpenAsync() => opening ??= ReadAllAsync();

    /// <summary>Has the page made anew, as if it had been opened only now.</summary>
    public void BeginAnew()
    {
        Beginning++;
        Changed?.Invoke();
    }

    /// <summary>Tries again after the store has refused.</summary>
    public Task ReopenAsync() => opening = ReadAllAsync();

    /// <summary>A new name for a sheet, a tone, a camera…</summary>
    public Ulid NewId() => Ulid.From(clock.Now, RandomNumberGenerator.GetBytes(Ulid.ChanceBytes));

    /// <summary>Writes what happened: all of it or nothing, in one transaction. When it returns, it is stored and in the ledger.</summary>
    /// <returns>The entries, in the order of the bodies.</returns>
    /// <exception cref="RefusalException">A body holds a value outside its range; nothing was written.</exception>
    /// <exception cref="StoreRefusedException">The store refused; nothing was written.</exception>
    public async Task<IReadOnlyList<Entry>> AppendAsync(params IReadOnlyList<EntryBody> bodies)
    {
        await OpenAsync();
        if (Device is not { } device)
        {
            throw Refused!;
        }

        // The instant is when it was said, not when the store found time for it.
        var now = clock.Now;
        await gate.WaitAsync();
        try
        {
            for (var attempt = 0; attempt < MaxAttempts; attempt++)
            {
                var first = lastSequence + 1;
                var entries = bodies.Select((body, i) => Entry.Create(NewId(), device, first + i, now, body)).ToList();
                if (await store.AppendAsync(first, [.. entries.Select(EntryLine.Write)]) is { } position)
                {
                    lastSequence += entries.Count;
                    await KeptAsync(position, entries, "");
                    return entries;
                }

                await ReadRestAsync();
            }
        }
        finally
        {
            gate.Release();
        }

        throw new StoreRefusedException(StoreRefusal.Failed, "other tabs kept writing first");
    }

    /// <summary>The entries after a position that did not come from this origin, oldest first, at most so many.</summary>
    public IReadOnlyList<KeptEntry> Unsent(string origin, long afterPosition, int most = int.MaxValue)
    {
        // Positions rise; nearly always only the last few are asked for.
        var first = kept.Count;
        while (first > 0 && kept[first - 1].Position > afterPosition)
        {
            first--;
        }

        return [.. kept.Skip(first).Where(one => one.Origin.Length == 0 || one.Origin != origin).Take(most)];
    }

    /// <summary>Takes in entries from elsewhere (an import, Home): those not here yet, all or nothing.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="origin">The Home they came from; empty where they came from none.</param>
    /// <returns>How many were new.</returns>
    /// <exception cref="StoreRefusedException">The store refused; nothing was written.</exception>
    public async Task<int> TakeInAsync(IReadOnlyList<Entry> entries, string origin = "")
    {
        await OpenAsync();
        if (Device is null)
        {
            throw Refused!;
        }

        await gate.WaitAsync();
        try
        {
            var fresh = entries.Where(entry => !Ledger.Entries.Contains(entry)).Distinct().ToList();
            if (fresh.Count == 0)
            {
                return 0;
            }

            await KeptAsync((await store.AppendAsync(0, [.. fresh.Select(EntryLine.Write)], origin))!.Value, fresh, origin);
            return fresh.Count;
        }
        finally
        {
            gate.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        store.AppendedElsewhere -= OnAppendedElsewhere;
        ending.Cancel();
        ending.Dispose();
        gate.Dispose();
    }

    private async Task ReadAllAsync()
    {
        try
        {
            var journal = await store.OpenAsync(NewDevice());
            Refused = null;
            unreadable.Clear();
            kept.Clear();
            Ledger = Ledger.Of(EntrySet.Of(Read(journal)));
            Checked = journal.Lines.Count > TrustedFrom ? CheckAsync([.. kept], ending.Token) : Task.CompletedTask;
            Device = DeviceId.Parse(journal.Device);
            store.AppendedElsewhere -= OnAppendedElsewhere;
            store.AppendedElsewhere += OnAppendedElsewhere;
        }
        catch (StoreRefusedException e)
        {
            Refused = e;
        }

        Changed?.Invoke();
    }

    private async Task CheckAsync(KeptEntry[] read, CancellationToken ended)
    {
        var damaged = new HashSet<KeptEntry>();
        try
        {
            for (var i = 0; i < read.Length; i++)
            {
                if (i % CheckedAtOnce == 0)
                {
                    await Task.Delay(PageTurn, ended);
                }

                if (!read[i].Entry.IsIntact())
                {
                    damaged.Add(read[i]);
                }
            }

            if (damaged.Count == 0)
            {
                return;
            }

            await gate.WaitAsync(ended);
        }
        catch (OperationCanceledException)
        {
            // The app is closed; the next start checks again.
            return;
        }

        try
        {
            kept.RemoveAll(damaged.Contains);
            unreadable.AddRange(damaged.Select(one => $"Entry {one.Entry.Id} does not match its hash; it was damaged or changed."));
            Ledger = Ledger.Of(EntrySet.Of(kept.Select(one => one.Entry)));
        }
        finally
        {
            gate.Release();
        }

        Changed?.Invoke();
    }

    private async Task KeptAsync(long position, List<Entry> entries, string origin)
    {
        if (position - entries.Count != lastPosition)
        {
            // Another tab has written in between: these are read with the rest.
            await ReadRestAsync();
            return;
        }

        for (var i = 0; i < entries.Count; i++)
        {
            kept.Add(new KeptEntry(lastPosition + i + 1, origin, entries[i]));
        }

        lastPosition = position;
        Ledger = Ledger.With(entries);
        Changed?.Invoke();
    }

    // A tab that lost its place reads on from where it knows; taking a line twice changes nothing.
    private async Task ReadRestAsync()
    {
        var rest = await store.ReadAfterAsync(lastPosition);
        Ledger = Ledger.With(Read(rest));
        Changed?.Invoke();
    }

    private List<Entry> Read(StoredJournal journal)
    {
        var entries = new List<Entry>(journal.Lines.Count);
        var trusted = journal.Lines.Count > TrustedFrom;
        foreach (var (position, line, origin) in journal.Lines)
        {
            lastPosition = Math.Max(lastPosition, position);
            try
            {
                var entry = trusted ? EntryLine.ReadTrusted(line) : EntryLine.Read(line);
                entries.Add(entry);
                kept.Add(new KeptEntry(position, origin, entry));
            }
            catch (RefusalException e)
            {
                unreadable.Add(e.Message);
            }
        }

        lastSequence = journal.Sequence;
        return entries;
    }

    private static string NewDevice() => "field-" + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));

    private async void OnAppendedElsewhere()
    {
        await gate.WaitAsync();
        try
        {
            await ReadRestAsync();
        }
        catch (StoreRefusedException)
        {
            // Nothing is lost: the next append finds itself behind and reads again.
        }
        finally
        {
            gate.Release();
        }
    }
}
