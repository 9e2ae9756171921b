using System.Data.Common;
using System.Globalization;
using Foramen.Journal.Sync;
using Foramen.Storage.Model;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Foramen.Storage;

/// <summary>
/// One SQLite file with a write-ahead log that is flushed at every commit. Entries are written by prepared commands on one connection: the change tracker of
/// the mapper would cost more than SQLite itself.
/// </summary>
internal sealed class SqliteJournalStore : JournalStore
{
    // Result codes of https://sqlite.org/rescode.html.
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    private readonly string file;
    private readonly TimeSpan patience;
    private readonly int? mostPages;
    private readonly DbContextOptions<SqliteHomeContext> options;
    private readonly SemaphoreSlim turn = new(1, 1);
    private Writer? writer;

    public SqliteJournalStore(string file, TimeSpan patience, int? mostPages)
    {
        this.file = Path.GetFullPath(file);
        this.patience = patience;
        this.mostPages = mostPages;
        Directory.CreateDirectory(Path.GetDirectoryName(this.file)!);
        options = new DbContextOptionsBuilder<SqliteHomeContext>()
            .UseSqlite(ConnectionString(), sqlite => sqlite.CommandTimeout(Seconds(patience)))
            .AddInterceptors(new FlushAtEveryCommit(mostPages))
            .Options;
    }

    public override async Task<Appended> AppendAsync(IReadOnlyList<ReceivedEntry> entries, int? broughtBy = null, CancellationToken cancellation = default)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            return await Guarded(() => Task.FromResult((writer ??= Writer.Open(ConnectionString(), Seconds(patience), mostPages)).Append(entries, broughtBy, cancellation)));
        }
        catch (StoreException)
        {
            // Whatever state the failure left the connection in, the next append starts from a clean one.
            writer?.Dispose();
            writer = null;
            throw;
        }
        finally
        {
            turn.Release();
        }
    }

    public override ValueTask DisposeAsync()
    {
        writer?.Dispose();
        turn.Dispose();
        using var connection = new SqliteConnection(ConnectionString());
        SqliteConnection.ClearPool(connection);
        return ValueTask.CompletedTask;
    }

    private protected override HomeContext NewContext() => new SqliteHomeContext(options);

    private protected override async Task<(string Database, string Durability, bool Safe)> DurabilityAsync(HomeContext context, CancellationToken cancellation)
    {
        var version = await ScalarAsync(context, "select sqlite_version()", cancellation);
        var journal = await ScalarAsync(context, "pragma journal_mode", cancellation);
        var synchronous = await ScalarAsync(context, "pragma synchronous", cancellation);
        return ($"SQLite {version}", $"journal_mode={journal} synchronous={synchronous}", journal == "wal" && synchronous is "2" or "3");
    }

    private protected override async Task CheckDatabaseAsync(HomeContext context, CancellationToken cancellation)
    {
        var answer = await ScalarAsync(context, "pragma integrity_check", cancellation);
        if (answer != "ok")
        {
            throw new StoreException(StoreTrouble.Damaged, $"SQLite finds {file} damaged: {answer.Split('\n')[0]}");
        }
    }

    private protected override StoreException? Understand(Exception failure) => failure switch
    {
        StoreException known => known,
        SqliteException e => e.SqliteErrorCode switch
        {
            Busy or Locked => new StoreException(StoreTrouble.Busy, "Another program is writing the journal; nothing was taken in. Try again.", e),
            Full => new StoreException(StoreTrouble.Full, "There is no room left for the journal; nothing was taken in. Make room and try again.", e),
            Corrupt or NotADatabase => new StoreException(StoreTrouble.Damaged, $"{file} is damaged or no journal of Foramen's; restore a backup.", e),
            ReadOnly or CannotOpen or InputOutput => new StoreException(StoreTrouble.Unreachable, $"{file} cannot be written or read ({e.Message}).", e),
            _ => null,
        },
        _ => null,
    };

    private static int Seconds(TimeSpan patience) => Math.Max(1, (int)Math.Ceiling(patience.TotalSeconds));

    private string ConnectionString() => new SqliteConnectionStringBuilder
    {
        DataSource = file, DefaultTimeout = Seconds(patience), Pooling = true,
    }.ToString();

    private static string Settings(int? mostPages) => "pragma journal_mode=wal; pragma synchronous=full; pragma cache_size=-65536"
        + (mostPages is { } most ? string.Create(CultureInfo.InvariantCulture, $"; pragma max_page_count={most}") : "");

    /// <summary>Defaults differ between builds of SQLite, so every connection is told.</summary>
    private sealed class FlushAtEveryCommit(int? mostPages) : DbConnectionInterceptor
    {
        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Tell(connection);

        public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            Tell(connection);
            return Task.CompletedTask;
        }

        private void Tell(DbConnection connection)
        {
            using var command = connection.CreateCommand();
            command.CommandText = Settings(mostPages);
            command.ExecuteNonQuery();
        }
    }

    /// <summary>The one connection that appends, and its prepared commands.</summary>
    private sealed class Writer : IDisposable
    {
        private readonly SqliteConnection connection;
        private readonly SqliteCommand insert;
        private readonly SqliteCommand last;
        private readonly SqliteCommand widen;
        private readonly SqliteParameter[] values;

        private Writer(SqliteConnection connection)
        {
            this.connection = connection;
            last = connection.CreateCommand();
            last.CommandText = "select arrival, mark from entry order by arrival desc limit 1";
            insert = connection.CreateCommand();
            insert.CommandText = "insert into entry(arrival, mark, entry_id, hash, kind, brought_by, about, line) values ($arrival, $mark, $id, $hash, $kind, $by, $about, $line) on conflict(entry_id, hash) do nothing";
            values =
            [
                new("$arrival", SqliteType.Integer), new("$id", SqliteType.Blob), new("$hash", SqliteType.Blob), new("$kind", SqliteType.Text),
                new("$by", SqliteType.Integer), new("$line", SqliteType.Blob), new("$mark", SqliteType.Integer),
                new("$about", SqliteType.Blob),
            ];
            insert.Parameters.AddRange(values);
            widen = connection.CreateCommand();
            widen.CommandText = WidenViews;
            widen.Parameters.AddRange(new SqliteParameter[] { new("@before", SqliteType.Integer), new("@mark", SqliteType.Integer) });
        }

        public static Writer Open(string connectionString, int patienceSeconds, int? mostPages)
        {
            var connection = new SqliteConnection(connectionString);
            connection.Open();
            connection.DefaultTimeout = patienceSeconds;
            using var command = connection.CreateCommand();
            command.CommandText = Settings(mostPages);
            command.ExecuteNonQuery();
            return new Writer(connection);
        }

        public Appended Append(IReadOnlyList<ReceivedEntry> entries, int? broughtBy, CancellationToken cancellation)
        {
            using var transaction = connection.BeginTransaction(deferred: false);
            last.Transaction = insert.Transaction = widen.Transaction = transaction;
            var before = Last();
            var (arrival, mark) = (before.Arrival, DrawMark());
            values[6].Value = mark;
            values[4].Value = (object?)broughtBy ?? DBNull.Value;
            foreach (var (entry, line) in entries)
            {
                cancellation.ThrowIfCancellationRequested();
                values[0].Value = arrival + 1;
                values[1].Value = entry.Id.ToBytes();
                values[2].Value = Convert.FromHexString(entry.Hash);
                values[3].Value = entry.Kind;
                values[5].Value = line;
                values[7].Value = (object?)EntryTopic.Of(entry)?.ToBytes() ?? DBNull.Value;
                arrival += insert.ExecuteNonQuery();
            }

            (widen.Parameters[0].Value, widen.Parameters[1].Value) = (before.Arrival, mark);
            widen.ExecuteNonQuery();
            transaction.Commit();
            var taken = (int)(arrival - before.Arrival);
            return new Appended(taken, entries.Count - taken, before, taken == 0 ? before : new StoreCursor(arrival, mark));
        }

        private StoreCursor Last()
        {
            using var reader = last.ExecuteReader();
            return reader.Read() ? new StoreCursor(reader.GetInt64(0), reader.GetInt64(1)) : default;
        }

        public void Dispose()
        {
            last.Dispose();
            insert.Dispose();
            widen.Dispose();
            connection.Dispose();
        }
    }
}
