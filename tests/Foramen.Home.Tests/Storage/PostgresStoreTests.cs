using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Storage;
using Npgsql;

namespace Foramen.Home.Tests.Storage;

/// <summary>The store on a PostgreSQL server, and the faults that only a server has.</summary>
public sealed class PostgresStoreTests(Servers servers) : JournalStoreTests
{
    private string connection = "";

    private protected override async Task<StoreSettings> NewStoreAsync() => StoreSettings.Postgres(connection = await (await servers.PostgresAsync()).NewDatabaseAsync());

    [Fact]
    [Trait("Promise", "H5")]
    public async Task Two_Homes_on_one_database_take_turns_so_numbers_rise_as_commits_do()
    {
        await using var other = await JournalStore.OpenAsync(StoreSettings.Postgres(connection), cancellation: Cancellation);
        var seen = new List<long>();
        var writing = Task.WhenAll(new[] { Store, other }.Select((store, home) => Task.Run(
            async () =>
            {
                for (var i = 0; i < 40; i++)
                {
                    await store.AppendAsync(Writing.Batch($"dev{home}", (i * 3) + 1, 3), cancellation: Cancellation);
                }
            },
            Cancellation)));
        var last = 0L;
        while (!writing.IsCompleted || seen.Count < 240)
        {
            foreach (var stored in await Store.ReadAfterAsync(last, cancellation: Cancellation))
            {
                seen.Add(last = stored.Arrival);
            }

            Cancellation.ThrowIfCancellationRequested();
        }

        await writing;
        Assert.Equal(240, (await Store.ConditionAsync(Cancellation)).Entries);
        Assert.Equal(240, seen.Count);
    }

    [Fact]
    [Trait("Promise", "H6")]
    public async Task A_lock_that_is_held_too_long_is_said_and_nothing_is_taken_in()
    {
        await using var hasty = await JournalStore.OpenAsync(StoreSettings.Postgres(connection) with { Patience = TimeSpan.FromMilliseconds(200) }, cancellation: Cancellation);
        await using var holder = new NpgsqlConnection(connection);
        await holder.OpenAsync(Cancellation);
        await using (await holder.BeginTransactionAsync(Cancellation))
        {
            await using var hold = new NpgsqlCommand("lock table entry in access exclusive mode", holder);
            await hold.ExecuteNonQueryAsync(Cancellation);
            Assert.Equal(StoreTrouble.Busy, (await Assert.ThrowsAsync<StoreException>(() => hasty.AppendAsync(Writing.Batch("phone", 1, 5), cancellation: Cancellation))).Trouble);
        }

        Assert.Equal(5, (await hasty.AppendAsync(Writing.Batch("phone", 1, 5), cancellation: Cancellation)).Taken);
    }

    [Fact]
    [Trait("Promise", "H1")]
    public async Task Nothing_acknowledged_is_lost_when_the_server_is_restarted_in_the_middle()
    {
        await using var own = await PostgresServer.StartAsync();
        await using var store = await JournalStore.OpenAsync(StoreSettings.Postgres(await own.NewDatabaseAsync()), cancellation: Cancellation);
        var acknowledged = new List<string>();
        var refused = 0;
        var restarts = Task.Run(
            async () =>
            {
                for (var i = 0; i < 2; i++)
                {
                    await Task.Delay(300, Cancellation);
                    await own.RestartAsync();
                }
            },
            Cancellation);
        for (var i = 0; !restarts.IsCompleted || i < 20; i++)
        {
            var batch = Writing.Batch("phone", (i * 5) + 1, 5);
            try
            {
                await store.AppendAsync(batch, cancellation: Cancellation);
                acknowledged.AddRange(batch.Select(one => one.Entry.Hash));
            }
            catch (StoreException e)
            {
                Assert.Equal(StoreTrouble.Unreachable, e.Trouble);
                refused++;
            }
        }

        await restarts;
        var present = new HashSet<string>();
        var last = 0L;
        while (await store.ReadAfterAsync(last, cancellation: Cancellation) is { Count: > 0 } page)
        {
            present.UnionWith(page.Select(stored => Foramen.Journal.Exchange.EntryLine.Read(stored.Line).Hash));
            last = page[^1].Arrival;
        }

        Assert.Empty(acknowledged.Except(present));
        Assert.NotEmpty(acknowledged);
        Assert.Equal(0, present.Count % 5);
    }

    [Fact]
    [Trait("Promise", "H2")]
    public async Task A_server_that_would_lose_commits_is_refused()
    {
        // A server of its own: other tests open stores on the shared one meanwhile.
        await using var own = await PostgresServer.StartAsync();
        var unsafely = await own.NewDatabaseAsync();
        await using var admin = new NpgsqlConnection(unsafely);
        await admin.OpenAsync(Cancellation);
        // Whoever set this gave durability away; the connection's own setting cannot be seen from here, fsync can.
        await using (var set = new NpgsqlCommand("alter system set full_page_writes = off; ", admin))
        {
            await set.ExecuteNonQueryAsync(Cancellation);
        }

        await using (var reload = new NpgsqlCommand("select pg_reload_conf()", admin))
        {
            await reload.ExecuteNonQueryAsync(Cancellation);
            await Task.Delay(300, Cancellation);
        }

        Assert.Equal(StoreTrouble.Unsafe, (await Assert.ThrowsAsync<StoreException>(() => JournalStore.OpenAsync(StoreSettings.Postgres(unsafely), cancellation: Cancellation))).Trouble);
    }

    [Theory]
    [InlineData("Host=127.0.0.1;Port=1;Database=x;Username=x;Password=hidden-word")]
    [InlineData("nonsense hidden-word")]
    public async Task A_server_that_cannot_be_reached_is_said_in_a_sentence_without_the_password(string wrong)
    {
        var refused = await Assert.ThrowsAsync<StoreException>(() => JournalStore.OpenAsync(StoreSettings.Postgres(wrong), cancellation: Cancellation));
        Assert.Equal(StoreTrouble.Unreachable, refused.Trouble);
        Assert.DoesNotContain("hidden-word", refused.Message, StringComparison.Ordinal);
    }
}
