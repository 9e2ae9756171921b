using System.Text;
using Foramen.Engine.Quantities;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal.Exchange;
using Foramen.Storage;
using Foramen.Storage.Backups;
using Foramen.Storage.Pictures;

namespace Foramen.Home.Tests.Backups;

public sealed class BackupTests(Servers servers) : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 5, 3, 12, 0, 0, TimeSpan.Zero);
    private readonly TempFolder folder = new();

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [Trait("Promise", "H10")]
    public async Task A_backup_restores_to_the_same_entries_in_the_same_order_also_on_the_other_database(bool fromPostgres, bool toPostgres)
    {
        var pictures = new PictureStore(folder.File("pictures"), Now);
        var hash = await AddPictureAsync(pictures);
        StoreDigest before;
        await using (var store = await JournalStore.OpenAsync(await SettingsAsync(fromPostgres, "one.sqlite"), cancellation: Cancellation))
        {
            await store.AppendAsync(Writing.Batch("phone", 1, 2_500), cancellation: Cancellation);
            before = await store.VerifyAsync(Cancellation);
            var list = await JournalBackup.WriteAsync(store, pictures, folder.File("backup"), Cancellation);
            Assert.Equal((2_500, before.Sha256, hash), (list.Entries, list.Sha256, Assert.Single(list.Pictures)));
        }

        // Any reader of journal files reads it too.
        Assert.Equal(2_500, JournalFile.Read(await File.ReadAllBytesAsync(folder.File("backup/" + JournalBackup.JournalName), Cancellation)).Entries.Count);
        var settings = await SettingsAsync(toPostgres, "two.sqlite");
        var restored = new PictureStore(folder.File("restored"), Now);
        await JournalBackup.RestoreAsync(folder.File("backup"), settings, restored, Cancellation);
        await using var again = await JournalStore.OpenAsync(settings, cancellation: Cancellation);
        Assert.Equal(before, await again.VerifyAsync(Cancellation));
        Assert.True(await restored.IsIntactAsync(hash, Cancellation));
    }

    [Fact]
    [Trait("Promise", "H10")]
    public async Task A_changed_byte_anywhere_in_a_backup_is_found_before_anything_is_restored()
    {
        await using (var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(folder.File("one.sqlite")), cancellation: Cancellation))
        {
            await store.AppendAsync(Writing.Batch("phone", 1, 3), cancellation: Cancellation);
            await JournalBackup.WriteAsync(store, null, folder.File("backup"), Cancellation);
        }

        var file = folder.File("backup/" + JournalBackup.JournalName);
        var whole = await File.ReadAllBytesAsync(file, Cancellation);
        var header = whole.AsSpan().IndexOf((byte)'\n') + 1;
        for (var i = header; i < whole.Length; i += 7)
        {
            var changed = whole.ToArray();
            changed[i] ^= 1;
            await File.WriteAllBytesAsync(file, changed, Cancellation);
            await Assert.ThrowsAsync<StoreException>(() => JournalBackup.RestoreAsync(folder.File("backup"), StoreSettings.Sqlite(folder.File("two.sqlite")), null, Cancellation));
        }

        await File.WriteAllBytesAsync(file, whole.AsMemory(0, whole.Length - 1), Cancellation);
        await Assert.ThrowsAsync<StoreException>(() => JournalBackup.VerifyAsync(folder.File("backup"), Cancellation));
        Assert.False(File.Exists(folder.File("two.sqlite")));
    }

    [Fact]
    [Trait("Promise", "H10")]
    public async Task A_restore_that_was_stopped_is_said_and_goes_on_when_run_again()
    {
        var settings = StoreSettings.Sqlite(folder.File("two.sqlite"));
        await using (var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(folder.File("one.sqlite")), cancellation: Cancellation))
        {
            await store.AppendAsync(Writing.Batch("phone", 1, 1_500), cancellation: Cancellation);
            await JournalBackup.WriteAsync(store, null, folder.File("backup"), Cancellation);
        }

        await using (var half = await JournalStore.OpenAsync(settings, cancellation: Cancellation))
        {
            // As a restore leaves it that was killed after its first batch.
            await half.MarkRestoringAsync(true, Cancellation);
            await half.AppendAsync(Writing.Batch("phone", 1, 1_000), cancellation: Cancellation);
        }

        Assert.Equal(StoreTrouble.Unfinished, (await Assert.ThrowsAsync<StoreException>(() => JournalStore.OpenAsync(settings, cancellation: Cancellation))).Trouble);
        await JournalBackup.RestoreAsync(folder.File("backup"), settings, null, Cancellation);
        await using var whole = await JournalStore.OpenAsync(settings, cancellation: Cancellation);
        Assert.Equal(1_500, (await whole.VerifyAsync(Cancellation)).Entries);
        await Assert.ThrowsAsync<RefusalException>(() => JournalBackup.RestoreAsync(folder.File("backup"), settings, null, Cancellation));
    }

    [Fact]
    [Trait("Promise", "H10")]
    public async Task A_backup_taken_while_devices_write_is_whole()
    {
        await using var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(folder.File("one.sqlite")), cancellation: Cancellation);
        var writing = Task.Run(
            async () =>
            {
                for (var i = 0; i < 100; i++)
                {
                    await store.AppendAsync(Writing.Batch("phone", (i * 20) + 1, 20), cancellation: Cancellation);
                }
            },
            Cancellation);
        var list = await JournalBackup.WriteAsync(store, null, folder.File("backup"), Cancellation);
        await writing;
        Assert.Equal(0, list.Entries % 20);
        Assert.Equal(list, await JournalBackup.VerifyAsync(folder.File("backup"), Cancellation) with { Pictures = list.Pictures });
    }

    [Fact]
    public async Task A_folder_of_journal_files_is_taken_in_and_what_is_bad_is_said()
    {
        await using var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(folder.File("one.sqlite")), cancellation: Cancellation);
        var files = Directory.CreateDirectory(folder.File("files")).FullName;
        await File.WriteAllBytesAsync(Path.Combine(files, "a.foramen.jsonl"), JournalFile.Write(Writing.Batch("a", 1, 10).Select(one => one.Entry)), Cancellation);
        var damaged = Encoding.UTF8.GetString(JournalFile.Write(Writing.Batch("b", 1, 10).Select(one => one.Entry))).Replace("concrete 3", "concrete 4", StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(files, "b.foramen.jsonl"), damaged, Cancellation);
        await File.WriteAllTextAsync(Path.Combine(files, "c.foramen.jsonl"), "a letter", Cancellation);
        var imported = await FolderImport.RunAsync(store, files, Cancellation);
        Assert.Equal([(10, 0), (9, 1), (0, 0)], imported.Select(one => (one.Taken, one.Bad)));
        Assert.Equal([false, true, true], imported.Select(one => one.Complaint is not null));
        Assert.Equal(19, (await store.ConditionAsync(Cancellation)).Entries);
    }

    private static async Task<string> AddPictureAsync(PictureStore pictures)
    {
        byte[] bytes = [0xFF, 0xD8, 0xFF, .. Enumerable.Range(0, 1_000).Select(i => (byte)i)];
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));
        await pictures.AppendAsync(hash, bytes.Length, 0, new MemoryStream(bytes), Cancellation);
        return hash;
    }

    private async Task<StoreSettings> SettingsAsync(bool postgres, string name)
        => postgres ? StoreSettings.Postgres(await (await servers.PostgresAsync()).NewDatabaseAsync()) : StoreSettings.Sqlite(folder.File(name));
}
