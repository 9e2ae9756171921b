using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using Foramen.Engine.Quantities;
using Foramen.Journal;

namespace Foramen.Storage.Pictures;

/// <summary>
/// Photographs and scans as files named by the SHA-256 of what they hold. A picture arrives in pieces, over as many connections as it takes, and counts only
/// when its bytes hash to its name. Never decoded here.
/// </summary>
public sealed class PictureStore
{
    /// <summary>Largest picture, bytes.</summary>
    public const long MaxBytes = 200_000_000;

    /// <summary>Most pictures that may be under way at once.</summary>
    public const int MaxPartial = 500;

    private static readonly TimeSpan ForgetPartialAfter = TimeSpan.FromDays(30);

    private readonly string directory;
    private readonly string partial;
    private readonly ConcurrentDictionary<string, SemaphoreSlim> turns = new(StringComparer.Ordinal);

    /// <summary>Pictures below a directory, made with the first picture; what was begun long ago and never ended is forgotten.</summary>
    /// <param name="directory">The directory.</param>
    /// <param name="now">Now.</param>
    public PictureStore(string directory, DateTimeOffset now)
    {
        this.directory = Path.GetFullPath(directory);
        partial = Path.Combine(this.directory, "partial");
        foreach (var old in (Directory.Exists(partial) ? Directory.EnumerateFiles(partial) : []).Where(file => now - File.GetLastWriteTimeUtc(file) > ForgetPartialAfter))
        {
            File.Delete(old);
        }
    }

    /// <summary>The hashes of all pictures that are whole.</summary>
    public IEnumerable<string> All => (Directory.Exists(directory) ? Directory.EnumerateDirectories(directory, "??") : [])
        .SelectMany(Directory.EnumerateFiles).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    /// <summary>The file of a picture that is whole; null where there is none, or the name is no hash.</summary>
    public string? Find(string hash) => ContentHash.Is(hash) && FileOf(hash) is var file && File.Exists(file) ? file : null;

    /// <summary>How far a picture has come.</summary>
    /// <param name="hash">Its hash.</param>
    public PictureProgress ProgressOf(string hash)
    {
        if (Find(hash) is { } file)
        {
            return new PictureProgress(new FileInfo(file).Length, true);
        }

        var begun = new FileInfo(PartialOf(Checked(hash)));
        return new PictureProgress(begun.Exists ? begun.Length : 0, false);
    }

    /// <summary>Takes in the next piece of a picture.</summary>
    /// <param name="hash">SHA-256 of the whole, 64 lower-case hexadecimal digits.</param>
    /// <param name="total">Length of the whole, bytes.</param>
    /// <param name="offset">Where the piece begins: exactly what is here already.</param>
    /// <param name="piece">Its bytes; what came before the connection was cut is kept.</param>
    /// <param name="cancellation">Stops; what came until then is kept.</param>
    /// <returns>How far it is now. An offset that does not fit changes nothing; the answer says the right one.</returns>
    /// <exception cref="RefusalException">Too large, not a picture, or not what its hash says: then it is forgotten.</exception>
    /// <exception cref="StoreException">There is no room.</exception>
    public async Task<PictureProgress> AppendAsync(string hash, long total, long offset, Stream piece, CancellationToken cancellation = default)
    {
        Checked(hash);
        if (total is < 1 or > MaxBytes)
        {
            throw new RefusalException(string.Create(CultureInfo.InvariantCulture, $"The picture has {total} bytes; 1 to {MaxBytes} are taken."));
        }

        var turn = turns.GetOrAdd(hash, _ => new SemaphoreSlim(1, 1));
        await turn.WaitAsync(cancellation);
        try
        {
            Directory.CreateDirectory(partial);
            var progress = ProgressOf(hash);
            if (progress.Complete || progress.Offset != offset)
            {
                return progress;
            }

            if (offset == 0 && Directory.EnumerateFiles(partial).Take(MaxPartial).Count() == MaxPartial)
            {
                throw new StoreException(StoreTrouble.Full, "Too many pictures are under way; let some of them end first.");
            }

            var length = await CopyAsync(hash, total, offset, piece, cancellation);
            return length == total ? await FinishAsync(hash, cancellation) : new PictureProgress(length, false);
        }
        catch (IOException e) when (IsFull(e))
        {
            throw new StoreException(StoreTrouble.Full, "There is no room left for pictures. Make room and try again.", e);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Takes in a whole picture from a file, if it is what its hash says.</summary>
    public async Task ImportAsync(string hash, string file, CancellationToken cancellation = default)
    {
        var length = new FileInfo(file).Length;
        await using var stream = File.OpenRead(file);
        var progress = ProgressOf(hash);
        stream.Position = progress.Complete ? 0 : progress.Offset;
        await AppendAsync(hash, length, progress.Offset, stream, cancellation);
    }

    /// <summary>Whether a picture's bytes still hash to its name.</summary>
    public async Task<bool> IsIntactAsync(string hash, CancellationToken cancellation = default)
    {
        if (Find(hash) is not { } file)
        {
            return false;
        }

        await using var stream = File.OpenRead(file);
        return Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancellation)) == hash;
    }

    private static string Checked(string hash) => ContentHash.Is(hash) ? hash : throw new RefusalException("A picture is named by its SHA-256: 64 lower-case hexadecimal digits.");

    // 28 is ENOSPC on Linux, 0x70 and 0x27 its kin on Windows.
    private static bool IsFull(IOException failure) => (failure.HResult & 0xFFFF) is 28 or 0x70 or 0x27 || failure.Message.Contains("No space left", StringComparison.Ordinal);

    private string FileOf(string hash) => Path.Combine(directory, hash[..2], hash);

    private string PartialOf(string hash) => Path.Combine(partial, hash);

    private async Task<long> CopyAsync(string hash, long total, long offset, Stream piece, CancellationToken cancellation)
    {
        await using var file = new FileStream(PartialOf(hash), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        file.Position = offset;
        var buffer = new byte[81_920];
        var sniffed = offset >= PictureKind.BytesNeeded;
        try
        {
            while (await piece.ReadAsync(buffer, cancellation) is > 0 and var read)
            {
                if (file.Position + read > total)
                {
                    await file.FlushAsync(cancellation);
                    throw Forgotten(hash, file, "The picture is longer than was said; it was forgotten.");
                }

                await file.WriteAsync(buffer.AsMemory(0, read), cancellation);
                if (!sniffed && file.Position >= Math.Min(total, PictureKind.BytesNeeded))
                {
                    sniffed = true;
                    var head = new byte[(int)Math.Min(total, PictureKind.BytesNeeded)];
                    var end = file.Position;
                    file.Position = 0;
                    await file.ReadExactlyAsync(head, cancellation);
                    file.Position = end;
                    if (PictureKind.MediaTypeOf(head) is null)
                    {
                        throw Forgotten(hash, file, "This is no JPEG, PNG, WebP, TIFF or HEIF picture by what it holds.");
                    }
                }
            }
        }
        finally
        {
            if (file.CanWrite)
            {
                file.Flush(flushToDisk: true);
            }
        }

        return file.Length;
    }

    private RefusalException Forgotten(string hash, FileStream file, string sentence)
    {
        file.Dispose();
        File.Delete(PartialOf(hash));
        return new RefusalException(sentence);
    }

    private async Task<PictureProgress> FinishAsync(string hash, CancellationToken cancellation)
    {
        long length;
        string found;
        await using (var stream = File.OpenRead(PartialOf(hash)))
        {
            length = stream.Length;
            found = Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancellation));
        }

        if (found != hash)
        {
            File.Delete(PartialOf(hash));
            throw new RefusalException("What arrived is not the picture that was announced; send it again.");
        }

        Directory.CreateDirectory(Path.GetDirectoryName(FileOf(hash))!);
        File.Move(PartialOf(hash), FileOf(hash), overwrite: true);
        return new PictureProgress(length, true);
    }
}
