using System.Diagnostics;
using Foramen.Home.Tests.Faults;
using Foramen.Journal.Bodies;
using Foramen.Journal.Sync;
using Foramen.Storage;
using Microsoft.Data.Sqlite;

namespace Foramen.HomeBench;

/// <summary>Appends by the store against the bare SQLite library: the same rows, columns, index, batches, log and flushes, in turns.</summary>
internal static class AppendRatio
{
    private const int Rounds = 7;

    public static async Task<(int Batch, double OursPerSecond, double RawPerSecond, double Ratio)> MeasureAsync(string folder, int batch, int batches)
    {
        await using var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(Path.Combine(folder, $"ours-{batch}.sqlite")));
        using var raw = new Raw(Path.Combine(folder, $"raw-{batch}.sqlite"));
        var (ours, bare, ratios) = (new List<double>(), new List<double>(), new List<double>());
        for (var round = 0; round <= Rounds; round++)
        {
            var work = Enumerable.Range(0, batches).Select(i => Writing.Batch($"r{round}", (i * batch) + 1, batch)).ToList();
            // What the rows hold, for the peer; ours works it out while it appends.
            var topics = work.Select(one => one.Select(received => EntryTopic.Of(received.Entry)?.ToBytes()).ToArray()).ToList();
            var watch = Stopwatch.StartNew();
            foreach (var one in work)
            {
                await store.AppendAsync(one);
            }

            var oursTook = watch.Elapsed.TotalSeconds;
            watch.Restart();
            for (var i = 0; i < work.Count; i++)
            {
                raw.Append(work[i], topics[i]);
            }

            var rawTook = watch.Elapsed.TotalSeconds;
            // The first round warms both up.
            if (round > 0)
            {
                ours.Add(batch * batches / oursTook);
                bare.Add(batch * batches / rawTook);
                ratios.Add(rawTook / oursTook);
            }
        }

        return (batch, Median(ours), Median(bare), Median(ratios));
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    /// <summary>What anyone would write by hand who wants it fast and safe.</summary>
    private sealed class Raw : IDisposable
    {
        private readonly SqliteConnection connection;
        private readonly SqliteCommand insert;
        private long arrival;

        public Raw(string file)
        {
            connection = new SqliteConnection($"Data Source={file}");
            connection.Open();
            Run("pragma journal_mode=wal; pragma synchronous=full; pragma cache_size=-65536");
            Run("create table entry(arrival integer primary key, mark integer not null, entry_id blob not null, hash blob not null, kind text not null, brought_by integer, about blob, line blob not null)");
            Run("create unique index entry_identity on entry(entry_id, hash)");
            Run($"create index entry_about on entry(about) where kind in ('{EntryKind.EntryVoided}', '{EntryKind.EntryAmended}', '{EntryKind.SheetStarted}')");
            insert = connection.CreateCommand();
            insert.CommandText = "insert into entry values ($1, $2, $3, $4, $5, null, $6, $7) on conflict do nothing";
            insert.Parameters.AddRange(new SqliteParameter[]
            {
                new("$1", SqliteType.Integer), new("$2", SqliteType.Integer), new("$3", SqliteType.Blob), new("$4", SqliteType.Blob), new("$5", SqliteType.Text), new("$6", SqliteType.Blob), new("$7", SqliteType.Blob),
            });
        }

        public void Append(IReadOnlyList<ReceivedEntry> entries, byte[]?[] topics)
        {
            using var transaction = connection.BeginTransaction(deferred: false);
            insert.Transaction = transaction;
            for (var i = 0; i < entries.Count; i++)
            {
                var (entry, line) = entries[i];
                insert.Parameters[0].Value = ++arrival;
                insert.Parameters[1].Value = arrival;
                insert.Parameters[2].Value = entry.Id.ToBytes();
                insert.Parameters[3].Value = Convert.FromHexString(entry.Hash);
                insert.Parameters[4].Value = entry.Kind;
                insert.Parameters[5].Value = (object?)topics[i] ?? DBNull.Value;
                insert.Parameters[6].Value = line;
                insert.ExecuteNonQuery();
            }

            transaction.Commit();
        }

        public void Dispose()
        {
            insert.Dispose();
            connection.Dispose();
        }

        private void Run(string sql)
        {
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }
    }
}
