using System.Globalization;
using System.Net.Sockets;
using Foramen.Journal.Sync;
using Foramen.Storage.Model;
using Microsoft.EntityFrameworkCore;
using Npgsql;
using NpgsqlTypes;

namespace Foramen.Storage;

/// <summary>
/// A database on a PostgreSQL server. A sequence would give numbers before the commits, and a reader could pass over one that commits late; here appends take
/// turns by a lock of the database itself, so numbers rise as commits do, whatever number of Homes write.
/// </summary>
internal sealed class PostgresJournalStore : JournalStore
{
    private const int Attempts = 5;

    // Any fixed number; it names the turn of appends in the database ("foramen" in ASCII).
    private const long Turn = 0x666F72616D656E;

    private const string Insert =
        """
        insert into entry(arrival, mark, entry_id, hash, kind, brought_by, about, line)
        select @before + one.place, @mark, one.id, one.hash, one.kind, @by, one.about, one.line
        from unnest(@ids, @hashes, @kinds, @abouts, @lines) with ordinality as one(id, hash, kind, about, line, place)
        order by one.place
        on conflict (entry_id, hash) do nothing
        returning arrival
        """;

    private readonly NpgsqlDataSource source;
    private readonly DbContextOptions<PostgresHomeContext> options;

    public PostgresJournalStore(string connection, TimeSpan patience)
    {
        NpgsqlConnectionStringBuilder told;
        try
        {
            told = new NpgsqlConnectionStringBuilder(connection) { ApplicationName = "Foramen Home" };
        }
        catch (Exception e) when (e is ArgumentException or FormatException)
        {
            throw new StoreException(StoreTrouble.Unreachable, "The PostgreSQL connection cannot be read; write it like “Host=127.0.0.1;Database=foramen;Username=foramen”.", e);
        }

        var milliseconds = (int)patience.TotalMilliseconds;
        // Room for a batch to wait its turn behind others, and a bound on how long.
        told.Options = string.Create(CultureInfo.InvariantCulture, $"-c lock_timeout={4 * milliseconds} -c synchronous_commit=on");
        told.Timeout = Math.Max(1, milliseconds / 1000);
        source = NpgsqlDataSource.Create(told);
        options = new DbContextOptionsBuilder<PostgresHomeContext>().UseNpgsql(source).Options;
    }

    public override async Task<Appended> AppendAsync(IReadOnlyList<ReceivedEntry> entries, int? broughtBy = null, CancellationToken cancellation = default)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await AppendOnceAsync(entries, broughtBy, cancellation);
            }
            catch (Exception e) when (attempt < Attempts && IsPassing(e))
            {
                // Whether the last attempt was committed is not known; appending again is harmless.
                await Task.Delay(TimeSpan.FromMilliseconds(50 << attempt), cancellation);
            }
            catch (Exception e) when (e is not OperationCanceledException && Understand(e) is { } understood)
            {
                throw understood;
            }
        }
    }

    public override ValueTask DisposeAsync() => source.DisposeAsync();

    private protected override HomeContext NewContext() => new PostgresHomeContext(options);

    private protected override async Task<(string Database, string Durability, bool Safe)> DurabilityAsync(HomeContext context, CancellationToken cancellation)
    {
        var version = await ScalarAsync(context, "show server_version", cancellation);
        var fsync = await ScalarAsync(context, "show fsync", cancellation);
        var pages = await ScalarAsync(context, "show full_page_writes", cancellation);
        var commit = await ScalarAsync(context, "show synchronous_commit", cancellation);
        return (
            $"PostgreSQL {version.Split(' ')[0]}",
            $"fsync={fsync} full_page_writes={pages} synchronous_commit={commit}",
            fsync == "on" && pages == "on" && commit is "on" or "remote_apply" or "remote_write" or "local");
    }

    private protected override Task CheckDatabaseAsync(HomeContext context, CancellationToken cancellation) => Task.CompletedTask;

    private protected override StoreException? Understand(Exception failure) => failure switch
    {
        StoreException known => known,
        PostgresException { SqlState: PostgresErrorCodes.LockNotAvailable } e
            => new StoreException(StoreTrouble.Busy, "Another program is writing the journal; nothing was taken in. Try again.", e),
        PostgresException { SqlState: PostgresErrorCodes.DiskFull } e
            => new StoreException(StoreTrouble.Full, "There is no room left for the journal; nothing was taken in. Make room and try again.", e),
        PostgresException { SqlState: PostgresErrorCodes.DataCorrupted or PostgresErrorCodes.IndexCorrupted } e
            => new StoreException(StoreTrouble.Damaged, "PostgreSQL finds its data damaged; restore a backup.", e),
        PostgresException e => new StoreException(StoreTrouble.Unreachable, $"PostgreSQL refused: {e.SqlState} {e.MessageText}.", e),
        NpgsqlException or SocketException or TimeoutException
            => new StoreException(StoreTrouble.Unreachable, "PostgreSQL cannot be reached, or it ended in the middle. Try again.", failure),
        _ => null,
    };

    private static bool IsPassing(Exception failure) => failure is NpgsqlException { IsTransient: true } or NpgsqlException { InnerException: IOException or SocketException }
        or PostgresException { SqlState: PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow };

    private async Task<Appended> AppendOnceAsync(IReadOnlyList<ReceivedEntry> entries, int? broughtBy, CancellationToken cancellation)
    {
        await using var connection = await source.OpenConnectionAsync(cancellation);
        await using var transaction = await connection.BeginTransactionAsync(cancellation);
        await using var turn = new NpgsqlCommand("select pg_advisory_xact_lock(@turn)", connection, transaction);
        turn.Parameters.AddWithValue("turn", Turn);
        await turn.ExecuteNonQueryAsync(cancellation);
        // Only a statement that begins after the lock is held sees what the holder before it committed.
        var before = await LastAsync(connection, transaction, cancellation);
        var mark = DrawMark();

        await using var insert = new NpgsqlCommand(Insert, connection, transaction);
        insert.Parameters.AddWithValue("before", before.Arrival);
        insert.Parameters.AddWithValue("mark", mark);
        insert.Parameters.Add(new NpgsqlParameter("by", NpgsqlDbType.Integer) { Value = (object?)broughtBy ?? DBNull.Value });
        insert.Parameters.AddWithValue("ids", entries.Select(one => one.Entry.Id.ToBytes()).ToArray());
        insert.Parameters.AddWithValue("hashes", entries.Select(one => Convert.FromHexString(one.Entry.Hash)).ToArray());
        insert.Parameters.AddWithValue("kinds", entries.Select(one => one.Entry.Kind).ToArray());
        insert.Parameters.Add(new NpgsqlParameter("abouts", NpgsqlDbType.Array | NpgsqlDbType.Bytea) { Value = entries.Select(one => EntryTopic.Of(one.Entry)?.ToBytes()).ToArray() });
        insert.Parameters.AddWithValue("lines", entries.Select(one => one.Line).ToArray());
        var (taken, after) = (0, before.Arrival);
        await using (var reader = await insert.ExecuteReaderAsync(cancellation))
        {
            while (await reader.ReadAsync(cancellation))
            {
                taken++;
                after = Math.Max(after, reader.GetInt64(0));
            }
        }

        await using var widen = new NpgsqlCommand(WidenViews, connection, transaction);
        widen.Parameters.AddWithValue("before", before.Arrival);
        widen.Parameters.AddWithValue("mark", mark);
        await widen.ExecuteNonQueryAsync(cancellation);
        await transaction.CommitAsync(cancellation);
        return new Appended(taken, entries.Count - taken, before, taken == 0 ? before : new StoreCursor(after, mark));
    }

    private static async Task<StoreCursor> LastAsync(NpgsqlConnection connection, NpgsqlTransaction transaction, CancellationToken cancellation)
    {
        await using var last = new NpgsqlCommand("select arrival, mark from entry order by arrival desc limit 1", connection, transaction);
        await using var reader = await last.ExecuteReaderAsync(cancellation);
        return await reader.ReadAsync(cancellation) ? new StoreCursor(reader.GetInt64(0), reader.GetInt64(1)) : default;
    }
}
