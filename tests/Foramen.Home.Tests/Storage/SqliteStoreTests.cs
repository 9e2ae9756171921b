using System.Text;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Storage;
using Microsoft.Data.Sqlite;

namespace Foramen.Home.Tests.Storage;

/// <summary>The store in an SQLite file, and the faults that only a file has.</summary>
public sealed class SqliteStoreTests : JournalStoreTests
{
    private readonly TempFolder folder = new();

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        folder.Dispose();
    }

    private protected override Task<StoreSettings> NewStoreAsync() => Task.FromResult(StoreSettings.Sqlite(folder.File("journal.sqlite")));

    [Fact]
    [Trait("Promise", "H6")]
    public async Task A_full_disk_is_said_nothing_is_half_taken_in_and_it_goes_on_when_there_is_room()
    {
        var file = folder.File("small.sqlite");
        int taken;
        await using (var small = await JournalStore.OpenAsync(StoreSettings.Sqlite(file) with { MostPages = 60 }, cancellation: Cancellation))
        {
            taken = await FillAsync(small, 50);
            Assert.Equal(taken, (await small.VerifyAsync(Cancellation)).Entries);
            // A smaller one may still fit; a large one never half.
            Assert.Equal(0, (await small.ConditionAsync(Cancellation)).Entries % 50);
        }

        await using var roomy = await JournalStore.OpenAsync(StoreSettings.Sqlite(file), cancellation: Cancellation);
        Assert.Equal(50, (await roomy.AppendAsync(Writing.Batch("phone", taken + 1, 50), cancellation: Cancellation)).Taken);
        Assert.Equal(taken + 50, (await roomy.VerifyAsync(Cancellation)).Entries);
    }

    [Fact]
    [Trait("Promise", "H6")]
    public async Task A_locked_database_is_said_and_nothing_is_taken_in_until_it_is_free()
    {
        var file = folder.File("locked.sqlite");
        await using var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(file) with { Patience = TimeSpan.FromSeconds(1) }, cancellation: Cancellation);
        await using var other = new SqliteConnection($"Data Source={file};Pooling=false");
        await other.OpenAsync(Cancellation);
        await using (var holding = other.BeginTransaction(deferred: false))
        {
            var refused = await Assert.ThrowsAsync<StoreException>(() => store.AppendAsync(Writing.Batch("phone", 1, 5), cancellation: Cancellation));
            Assert.Equal(StoreTrouble.Busy, refused.Trouble);
            // Readers are not kept waiting by a writer.
            Assert.Empty(await store.ReadAfterAsync(0, cancellation: Cancellation));
        }

        Assert.Equal(5, (await store.AppendAsync(Writing.Batch("phone", 1, 5), cancellation: Cancellation)).Taken);
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_refused_and_left_as_it_is()
    {
        var file = folder.File("letter.sqlite");
        var letter = Encoding.UTF8.GetBytes(new string('x', 5_000));
        await File.WriteAllBytesAsync(file, letter, Cancellation);
        Assert.Equal(StoreTrouble.Damaged, (await Assert.ThrowsAsync<StoreException>(() => JournalStore.OpenAsync(StoreSettings.Sqlite(file), cancellation: Cancellation))).Trouble);
        Assert.Equal(letter, await File.ReadAllBytesAsync(file, Cancellation));
    }

    [Fact]
    [Trait("Promise", "H4")]
    public async Task A_changed_byte_in_the_file_is_found()
    {
        var file = folder.File("bitten.sqlite");
        await using (var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(file), cancellation: Cancellation))
        {
            await store.AppendAsync(Writing.Batch("phone", 1, 50), cancellation: Cancellation);
        }

        var bytes = await File.ReadAllBytesAsync(file, Cancellation);
        var at = bytes.AsSpan().LastIndexOf("pale concrete 7\""u8);
        Assert.True(at > 0, "The last connection to close writes the log back into the file.");
        bytes[at] ^= 1;
        await File.WriteAllBytesAsync(file, bytes, Cancellation);
        await using var bitten = await JournalStore.OpenAsync(StoreSettings.Sqlite(file), cancellation: Cancellation);
        Assert.Equal(StoreTrouble.Damaged, (await Assert.ThrowsAsync<StoreException>(() => bitten.VerifyAsync(Cancellation))).Trouble);
    }

    [Fact]
    [Trait("Promise", "H1")]
    public async Task Nothing_acknowledged_is_lost_when_Home_is_killed()
    {
        var data = folder.File("killed");
        var result = await KillRun.RunAsync(Repository.HomeDll, ["--data", data], StoreSettings.Sqlite(Path.Combine(data, "journal.sqlite")), kills: 8, seed: 7);
        Assert.Equal((0, 0, 0, 0), (result.Lost, result.Torn, result.Unexpected, result.Corrupt));
        Assert.True(result.Acknowledged > 0, "Nothing was written between the kills, so they proved nothing.");
    }

    private static async Task<int> FillAsync(JournalStore store, int batch)
    {
        for (var taken = 0; taken < 100_000; taken += batch)
        {
            try
            {
                await store.AppendAsync(Writing.Batch("phone", taken + 1, batch), cancellation: Cancellation);
            }
            catch (StoreException e)
            {
                Assert.Equal(StoreTrouble.Full, e.Trouble);
                return taken;
            }
        }

        throw new InvalidOperationException("It never filled up.");
    }
}
