using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Exchange;
using Foramen.Storage.Pictures;

namespace Foramen.Storage.Backups;

/// <summary>
/// A backup is a folder that needs no database: the journal as a journal file, the pictures as files, and a list of what must be in it. Written beside its
/// place and moved there when it is whole, read back before it counts.
/// </summary>
public static class JournalBackup
{
    /// <summary>The journal's file in the folder.</summary>
    public const string JournalName = "journal" + JournalFile.Extension;

    private const string ListName = "backup.json";
    private const string PicturesName = "pictures";
    private const int RestoreBatch = 1_000;
    private const int MaxLineBytes = 1_048_576;

    /// <summary>Writes a backup of what is in the store at this moment; Home may go on meanwhile.</summary>
    /// <param name="store">The journal.</param>
    /// <param name="pictures">The pictures; null for none.</param>
    /// <param name="folder">Where; must not exist yet.</param>
    /// <param name="cancellation">Stops; nothing is left at its place.</param>
    /// <exception cref="RefusalException">The folder is there already.</exception>
    /// <exception cref="StoreException">The store could not be read, or what was written does not read back.</exception>
    public static async Task<BackupList> WriteAsync(JournalStore store, PictureStore? pictures, string folder, CancellationToken cancellation = default)
    {
        if (Directory.Exists(folder) || File.Exists(folder))
        {
            throw new RefusalException($"{folder} is there already; name a new folder.");
        }

        var building = folder.TrimEnd(Path.DirectorySeparatorChar) + ".part";
        if (Directory.Exists(building))
        {
            Directory.Delete(building, recursive: true);
        }

        Directory.CreateDirectory(Path.Combine(building, PicturesName));
        var digest = await WriteJournalAsync(store, Path.Combine(building, JournalName), cancellation);
        var names = pictures?.All.ToList() ?? [];
        foreach (var hash in names)
        {
            File.Copy(pictures!.Find(hash)!, Path.Combine(building, PicturesName, hash));
        }

        var list = new BackupList(1, digest.Entries, digest.Sha256, names);
        await WriteFlushedAsync(Path.Combine(building, ListName), JsonSerializer.SerializeToUtf8Bytes(list, BackupJson.Default.BackupList), cancellation);
        await VerifyAsync(building, cancellation);
        Directory.Move(building, folder);
        return list;
    }

    /// <summary>Reads a backup back: every entry against its hash, the whole against the list, every picture against its name.</summary>
    /// <exception cref="RefusalException">It is no backup.</exception>
    /// <exception cref="StoreException">Something in it is damaged or missing.</exception>
    public static async Task<BackupList> VerifyAsync(string folder, CancellationToken cancellation = default)
    {
        var list = await ReadListAsync(folder, cancellation);
        using var sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var count = 0L;
        await foreach (var line in LinesAsync(Path.Combine(folder, JournalName), cancellation))
        {
            Read(line, ++count);
            sha.AppendData(line);
            sha.AppendData("\n"u8);
        }

        if (count != list.Entries || Convert.ToHexStringLower(sha.GetHashAndReset()) != list.Sha256)
        {
            throw new StoreException(StoreTrouble.Damaged, string.Create(CultureInfo.InvariantCulture, $"{folder} should hold {list.Entries} entries and holds {count}, or others; take another backup."));
        }

        foreach (var hash in list.Pictures)
        {
            var file = Path.Combine(folder, PicturesName, Checked(hash));
            if (!File.Exists(file) || await HashOfAsync(file, cancellation) != hash)
            {
                throw new StoreException(StoreTrouble.Damaged, $"The picture {hash} in {folder} is missing or damaged; take another backup.");
            }
        }

        return list;
    }

    /// <summary>
    /// Puts a backup into an empty store and reads it back. A restore that was stopped is gone on with by running it again; until it has ended Home does not open the store.
    /// </summary>
    /// <exception cref="RefusalException">It is no backup, or the store is not empty.</exception>
    /// <exception cref="StoreException">Something in it is damaged, or the store refuses.</exception>
    public static async Task<BackupList> RestoreAsync(string folder, StoreSettings settings, PictureStore? pictures, CancellationToken cancellation = default)
    {
        var list = await VerifyAsync(folder, cancellation);
        await using var store = await JournalStore.OpenAsync(settings, forRestore: true, cancellation);
        var begun = await store.IsRestoringAsync(cancellation);
        if (!begun && await store.LastArrivalAsync(cancellation) > 0)
        {
            throw new RefusalException($"{settings} holds a journal already; restore into an empty place, or take the backup's journal file in with “journal import”.");
        }

        await store.MarkRestoringAsync(true, cancellation);
        var batch = new List<ReceivedEntry>(RestoreBatch);
        await foreach (var line in LinesAsync(Path.Combine(folder, JournalName), cancellation))
        {
            batch.Add(new ReceivedEntry(EntryLine.Read(line), line));
            if (batch.Count == RestoreBatch)
            {
                await store.AppendAsync(batch, cancellation: cancellation);
                batch.Clear();
            }
        }

        await store.AppendAsync(batch, cancellation: cancellation);
        foreach (var hash in list.Pictures)
        {
            await (pictures?.ImportAsync(hash, Path.Combine(folder, PicturesName, hash), cancellation) ?? Task.CompletedTask);
        }

        // A backup that another version wrote with doubled lines would be shorter here; ours has none.
        var digest = await store.VerifyAsync(cancellation);
        if (digest != new StoreDigest(list.Entries, list.Sha256))
        {
            throw new StoreException(StoreTrouble.Damaged, string.Create(CultureInfo.InvariantCulture, $"{settings} holds {digest.Entries} entries after the restore, and the backup {list.Entries}, or others."));
        }

        await store.MarkRestoringAsync(false, cancellation);
        return list;
    }

    private static async Task<StoreDigest> WriteJournalAsync(JournalStore store, string file, CancellationToken cancellation)
    {
        using var sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16);
        await stream.WriteAsync(JournalFile.Write([]), cancellation);
        var (count, last) = (0L, 0L);
        while (await store.ReadAfterAsync(last, cancellation: cancellation) is { Count: > 0 } page)
        {
            foreach (var stored in page)
            {
                await stream.WriteAsync(stored.Line, cancellation);
                stream.WriteByte((byte)'\n');
                sha.AppendData(stored.Line);
                sha.AppendData("\n"u8);
            }

            count += page.Count;
            last = page[^1].Arrival;
        }

        stream.Flush(flushToDisk: true);
        return new StoreDigest(count, Convert.ToHexStringLower(sha.GetHashAndReset()));
    }

    private static async Task<BackupList> ReadListAsync(string folder, CancellationToken cancellation)
    {
        var file = Path.Combine(folder, ListName);
        if (!File.Exists(file) || !File.Exists(Path.Combine(folder, JournalName)))
        {
            throw new RefusalException($"{folder} is no backup of Foramen's: {ListName} and {JournalName} should be in it.");
        }

        try
        {
            return JsonSerializer.Deserialize(await File.ReadAllBytesAsync(file, cancellation), BackupJson.Default.BackupList) is { ForamenBackup: 1, Sha256: not null, Pictures: not null } list
                ? list
                : throw new RefusalException($"{file} is not the list of a backup that this version can read.");
        }
        catch (JsonException e)
        {
            throw new RefusalException($"{file} is damaged; the backup cannot be trusted.", e);
        }
    }

    /// <summary>The entry lines of a journal file of any length, one at a time.</summary>
    private static async IAsyncEnumerable<byte[]> LinesAsync(string file, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation)
    {
        await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        var reader = System.IO.Pipelines.PipeReader.Create(stream);
        var first = true;
        while (true)
        {
            var read = await reader.ReadAsync(cancellation);
            var buffer = read.Buffer;
            while (buffer.PositionOf((byte)'\n') is { } end)
            {
                var line = buffer.Slice(0, end).ToArray();
                buffer = buffer.Slice(buffer.GetPosition(1, end));
                if (first)
                {
                    // The header.
                    JournalFile.Read(line);
                    first = false;
                }
                else
                {
                    yield return line;
                }
            }

            if (buffer.Length > MaxLineBytes)
            {
                throw new StoreException(StoreTrouble.Damaged, $"A line of {file} is longer than {MaxLineBytes} bytes.");
            }

            if (read.IsCompleted)
            {
                if (!buffer.IsEmpty)
                {
                    throw new StoreException(StoreTrouble.Damaged, $"{file} was cut short.");
                }

                await reader.CompleteAsync();
                yield break;
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    private static void Read(byte[] line, long number)
    {
        try
        {
            EntryLine.Read(line);
        }
        catch (RefusalException e)
        {
            throw new StoreException(StoreTrouble.Damaged, string.Create(CultureInfo.InvariantCulture, $"Entry {number} of the backup is damaged: {e.Message}"), e);
        }
    }

    private static string Checked(string hash) => ContentHash.Is(hash) ? hash : throw new StoreException(StoreTrouble.Damaged, "The backup's list names a picture by something that is no hash.");

    private static async Task<string> HashOfAsync(string file, CancellationToken cancellation)
    {
        await using var stream = File.OpenRead(file);
        return Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancellation));
    }

    private static async Task WriteFlushedAsync(string file, byte[] bytes, CancellationToken cancellation)
    {
        await using var stream = File.Create(file);
        await stream.WriteAsync(bytes, cancellation);
        stream.Flush(flushToDisk: true);
    }
}
