using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;
using Foramen.Engine.Quantities;
using Foramen.Journal.Exchange;
using Foramen.Journal.Sync;
using Foramen.Storage.Model;
using Microsoft.EntityFrameworkCore;

namespace Foramen.Storage;

/// <summary>
/// The journal at home. Only adds: an append is one transaction, returns after its commit, and does nothing a second time. Arrival numbers rise in the order of
/// the commits, so a reader that goes on after the last number it saw never passes over an entry.
/// </summary>
/// <remarks>May be used by any number of callers at once; appends take turns.</remarks>
public abstract class JournalStore : IAsyncDisposable
{
    private const int DigestPage = 5_000;

    private protected JournalStore()
    {
    }

    /// <summary>The name this store drew when it was made. Arrival numbers of another name mean nothing here.</summary>
    public string Epoch { get; private set; } = "";

    /// <summary>The devices that were paired.</summary>
    public DeviceRegister Devices => field ??= new DeviceRegister(NewContext, Guarded<object?>);

    /// <summary>The workshops.</summary>
    public WorkshopRegister Workshops => field ??= new WorkshopRegister(NewContext, Guarded<object?>);

    /// <summary>
    /// The store's name as this device knows it. To a member of a workshop it is another store than to the household, and another again when what the member may
    /// see has grown backwards: then everything is compared anew, and nothing is passed over.
    /// </summary>
    public string EpochFor(PairedDevice? viewer)
        => viewer is { WorkshopId: not null } ? string.Create(CultureInfo.InvariantCulture, $"{Epoch}.{viewer.Id}.{viewer.View}") : Epoch;

    /// <summary>Opens the store: makes or upgrades its tables, and reads back whether it keeps what it acknowledges.</summary>
    /// <param name="settings">Which database.</param>
    /// <param name="forRestore">Whether a restore that was begun may be gone on with.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="StoreException">It cannot be opened, or not safely; the message says why.</exception>
    public static async Task<JournalStore> OpenAsync(StoreSettings settings, bool forRestore = false, CancellationToken cancellation = default)
    {
        JournalStore store = settings.SqliteFile is { } file
            ? new SqliteJournalStore(file, settings.Patience, settings.MostPages)
            : new PostgresJournalStore(settings.PostgresConnection!, settings.Patience);
        try
        {
            await store.StartAsync(forRestore, cancellation);
            return store;
        }
        catch
        {
            await store.DisposeAsync();
            throw;
        }
    }

    /// <summary>Takes in the entries that are not there yet, all or none. When it returns they are committed.</summary>
    /// <param name="entries">The entries; doubled ones count once.</param>
    /// <param name="broughtBy">The paired device that brought them; null for this machine.</param>
    /// <param name="cancellation">Stops before the commit.</param>
    /// <exception cref="StoreException">Nothing was taken in; the message says why.</exception>
    public abstract Task<Appended> AppendAsync(IReadOnlyList<ReceivedEntry> entries, int? broughtBy = null, CancellationToken cancellation = default);

    /// <summary>The entries after an arrival number, in order of arrival.</summary>
    /// <exception cref="StoreException">They could not be read.</exception>
    public Task<IReadOnlyList<StoredLine>> ReadAfterAsync(long arrival, ReadLimits? limits = null, CancellationToken cancellation = default)
        => Guarded(async () =>
        {
            var most = limits ?? ReadLimits.Usual;
            await using var context = NewContext();
            var rows = context.Entries.AsNoTracking().Where(one => one.Arrival > arrival).OrderBy(one => one.Arrival).Take(most.Entries)
                .Select(one => new { one.Arrival, one.Line }).AsAsyncEnumerable();
            var lines = new List<StoredLine>();
            var bytes = 0L;
            await foreach (var row in rows.WithCancellation(cancellation))
            {
                bytes += row.Line.Length;
                if (lines.Count > 0 && bytes > most.Bytes)
                {
                    break;
                }

                lines.Add(new StoredLine(row.Arrival, row.Line));
            }

            return (IReadOnlyList<StoredLine>)lines;
        });

    /// <summary>The entries after a cursor of the store of this name, in order of arrival.</summary>
    /// <param name="epoch">The name the cursor belongs to.</param>
    /// <param name="cursor">The cursor.</param>
    /// <param name="limits">How much is given at once.</param>
    /// <param name="viewer">Who reads; a member of a workshop is given only what members may see.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="StoreException">They could not be read.</exception>
    public Task<StorePage> ReadAsync(string? epoch, string? cursor, ReadLimits? limits = null, PairedDevice? viewer = null, CancellationToken cancellation = default)
        => Guarded(async () =>
        {
            var most = limits ?? ReadLimits.Usual;
            await using var context = NewContext();
            var from = epoch == EpochFor(viewer) ? StoreCursor.Parse(cursor) : default;
            if (from.Arrival > 0 && !await context.Entries.AnyAsync(one => one.Arrival == from.Arrival && one.Mark == from.Mark, cancellation))
            {
                from = default;
            }

            // For a member, what others keep for themselves is behind the cursor too; taken before reading, so that nothing is that arrives meanwhile.
            var end = viewer is { WorkshopId: not null }
                ? await context.Entries.OrderByDescending(one => one.Arrival).Select(one => new StoreCursor(one.Arrival, one.Mark)).FirstOrDefaultAsync(cancellation)
                : default;
            var visible = viewer is { WorkshopId: not null } ? MemberView.Of(context, viewer).Where(one => one.Arrival <= end.Arrival) : context.Entries;
            // One more than asked for tells whether there are more.
            var rows = visible.AsNoTracking().Where(one => one.Arrival > from.Arrival).OrderBy(one => one.Arrival).Take(most.Entries + 1)
                .Select(one => new { one.Arrival, one.Mark, one.Line }).AsAsyncEnumerable();
            var lines = new List<byte[]>();
            var (bytes, next) = (0L, from);
            await foreach (var row in rows.WithCancellation(cancellation))
            {
                bytes += row.Line.Length;
                if (lines.Count == most.Entries || (lines.Count > 0 && bytes > most.Bytes))
                {
                    return new StorePage(from, next, true, lines);
                }

                lines.Add(row.Line);
                next = new StoreCursor(row.Arrival, row.Mark);
            }

            return new StorePage(from, end.Arrival > next.Arrival ? end : next, false, lines);
        });

    /// <summary>The last arrival; zero where there is none.</summary>
    public Task<long> LastArrivalAsync(CancellationToken cancellation = default) => Guarded(async () =>
    {
        await using var context = NewContext();
        return await context.Entries.MaxAsync(one => (long?)one.Arrival, cancellation) ?? 0;
    });

    /// <summary>How the database stands.</summary>
    public Task<StoreCondition> ConditionAsync(CancellationToken cancellation = default) => Guarded(async () =>
    {
        await using var context = NewContext();
        var (database, durability, safe) = await DurabilityAsync(context, cancellation);
        return new StoreCondition(database, durability, safe, await context.Entries.LongCountAsync(cancellation));
    });

    /// <summary>
    /// Reads every entry back and checks its hash, and asks the database to check itself.
    /// </summary>
    /// <returns>How many entries, and SHA-256 over all lines in order of arrival, each with a line break behind it.</returns>
    /// <exception cref="StoreException">Something is damaged.</exception>
    public async Task<StoreDigest> VerifyAsync(CancellationToken cancellation = default)
    {
        await Guarded(async () =>
        {
            await using var context = NewContext();
            await CheckDatabaseAsync(context, cancellation);
            return true;
        });
        using var sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var (count, last) = (0L, 0L);
        var newLine = "\n"u8.ToArray();
        while (await ReadAfterAsync(last, new ReadLimits(DigestPage, int.MaxValue), cancellation) is { Count: > 0 } page)
        {
            foreach (var stored in page)
            {
                try
                {
                    EntryLine.Read(stored.Line);
                }
                catch (RefusalException e)
                {
                    throw new StoreException(
                        StoreTrouble.Damaged, string.Create(CultureInfo.InvariantCulture, $"Entry {stored.Arrival} of the store is damaged: {e.Message}"), e);
                }

                sha.AppendData(stored.Line);
                sha.AppendData(newLine);
            }

            count += page.Count;
            last = page[^1].Arrival;
        }

        return new StoreDigest(count, Convert.ToHexStringLower(sha.GetHashAndReset()));
    }

    /// <inheritdoc/>
    public abstract ValueTask DisposeAsync();

    /// <summary>Whether a restore was begun and has not ended.</summary>
    internal Task<bool> IsRestoringAsync(CancellationToken cancellation) => Guarded(async () =>
    {
        await using var context = NewContext();
        return await context.Facts.AnyAsync(one => one.Name == StoredFact.Restoring, cancellation);
    });

    /// <summary>Says in the store itself that a restore has begun, or ended.</summary>
    internal Task MarkRestoringAsync(bool restoring, CancellationToken cancellation) => Guarded(async () =>
    {
        await using var context = NewContext();
        var mark = await context.Facts.FindAsync([StoredFact.Restoring], cancellation);
        if (restoring && mark is null)
        {
            context.Facts.Add(new StoredFact { Name = StoredFact.Restoring, Value = "yes" });
        }
        else if (!restoring && mark is not null)
        {
            context.Facts.Remove(mark);
        }

        await context.SaveChangesAsync(cancellation);
        return true;
    });

    /// <summary>
    /// What an append must do in its own transaction: where a voiding or an amendment had arrived before the entry it is about, members were not given it, and
    /// must compare everything anew.
    /// </summary>
    private protected const string WidenViews =
        """
        update device set view = view + 1 where workshop_id is not null and revoked_at is null and exists (
          select 1 from entry target join entry earlier on earlier.about = target.entry_id and earlier.kind in ('entry.voided', 'entry.amended', 'sheet.started')
          where target.arrival > @before and target.mark = @mark and earlier.arrival <= @before and earlier.kind <> 'sheet.started')
        """;

    private protected static long DrawMark() => BitConverter.ToInt64(RandomNumberGenerator.GetBytes(sizeof(long)));

    private protected abstract HomeContext NewContext();

    /// <summary>The database with its version, its settings against power cuts, and whether they are enough.</summary>
    private protected abstract Task<(string Database, string Durability, bool Safe)> DurabilityAsync(HomeContext context, CancellationToken cancellation);

    private protected abstract Task CheckDatabaseAsync(HomeContext context, CancellationToken cancellation);

    /// <summary>The database's own failure as one of ours; null where it is none that a user can do something about.</summary>
    private protected abstract StoreException? Understand(Exception failure);

    private protected async Task<T> Guarded<T>(Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (Exception failure) when (failure is not OperationCanceledException && Understand(Cause(failure)) is { } understood)
        {
            throw understood;
        }
    }

    private static Exception Cause(Exception failure)
        => failure is DbUpdateException or InvalidOperationException && failure.InnerException is { } inner ? Cause(inner) : failure;

    private protected static async Task<string> ScalarAsync(HomeContext context, string sql, CancellationToken cancellation)
    {
        await context.Database.OpenConnectionAsync(cancellation);
        await using DbCommand command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(await command.ExecuteScalarAsync(cancellation), CultureInfo.InvariantCulture) ?? "";
    }

    private async Task StartAsync(bool forRestore, CancellationToken cancellation)
    {
        await Guarded(async () =>
        {
            await using var context = NewContext();
            await context.Database.MigrateAsync(cancellation);
            return true;
        });
        await Guarded(async () =>
        {
            await using var context = NewContext();
            var (database, durability, safe) = await DurabilityAsync(context, cancellation);
            if (!safe)
            {
                throw new StoreException(StoreTrouble.Unsafe, $"{database} is set to {durability}, so a power cut could lose what Home has acknowledged; set it to keep every commit.");
            }

            if (!forRestore && await context.Facts.AnyAsync(one => one.Name == StoredFact.Restoring, cancellation))
            {
                throw new StoreException(StoreTrouble.Unfinished, "A backup was being restored here and did not end; run the restore again.");
            }

            await AskTopicsAsync(context, cancellation);
            if (await context.Facts.FindAsync([StoredFact.Epoch], cancellation) is { } known)
            {
                Epoch = known.Value;
                return true;
            }

            Epoch = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
            context.Facts.Add(new StoredFact { Name = StoredFact.Epoch, Value = Epoch });
            await context.SaveChangesAsync(cancellation);
            return true;
        });
    }

    // Versions before the workshops did not write down what an entry is about.
    private static async Task AskTopicsAsync(HomeContext context, CancellationToken cancellation)
    {
        if (await context.Facts.AnyAsync(one => one.Name == StoredFact.Topics, cancellation))
        {
            return;
        }

        for (var last = 0L; ;)
        {
            var page = await context.Entries.Where(one => one.Arrival > last && one.About == null).OrderBy(one => one.Arrival).Take(DigestPage).ToListAsync(cancellation);
            if (page.Count == 0)
            {
                break;
            }

            foreach (var stored in page)
            {
                try
                {
                    stored.About = EntryTopic.Of(EntryLine.Read(stored.Line))?.ToBytes();
                }
                catch (RefusalException)
                {
                    // Damaged; that is said where the store is verified, and must not keep Home from opening.
                }
            }

            last = page[^1].Arrival;
            await context.SaveChangesAsync(cancellation);
            context.ChangeTracker.Clear();
        }

        context.Facts.Add(new StoredFact { Name = StoredFact.Topics, Value = "1" });
        await context.SaveChangesAsync(cancellation);
    }
}
