using Foramen.Engine.Quantities;
using Foramen.Journal.Exchange;

namespace Foramen.Storage.Backups;

/// <summary>Takes in journal files without a network between: a file, or all of a folder.</summary>
public static class FolderImport
{
    private const long MaxFileBytes = 1_500_000_000;
    private const int BatchEntries = 1_000;

    /// <summary>The journal files of a place.</summary>
    /// <exception cref="RefusalException">There is none.</exception>
    public static IReadOnlyList<string> FilesOf(string place)
    {
        var files = File.Exists(place) ? [place]
            : Directory.Exists(place) ? Directory.EnumerateFiles(place, "*" + JournalFile.Extension).Order(StringComparer.Ordinal).ToList()
            : throw new RefusalException($"There is no file or folder {place}.");
        return files.Count > 0 ? files : throw new RefusalException($"{place} holds no journal; their names end in {JournalFile.Extension}.");
    }

    /// <summary>Takes in what is good of each file and tells what is not.</summary>
    /// <param name="store">The journal.</param>
    /// <param name="place">A journal file, or a folder with some.</param>
    /// <param name="cancellation">Stops between batches; what was taken in stays.</param>
    /// <exception cref="RefusalException">There is no journal file.</exception>
    public static async Task<IReadOnlyList<ImportedFile>> RunAsync(JournalStore store, string place, CancellationToken cancellation = default)
    {
        var imported = new List<ImportedFile>();
        foreach (var file in FilesOf(place))
        {
            imported.Add(await FileAsync(store, file, cancellation));
        }

        return imported;
    }

    private static async Task<ImportedFile> FileAsync(JournalStore store, string file, CancellationToken cancellation)
    {
        if (new FileInfo(file).Length > MaxFileBytes)
        {
            return new ImportedFile(file, 0, 0, 0, $"It is larger than {MaxFileBytes} bytes; split it by lines.");
        }

        try
        {
            var read = JournalFile.Read(await File.ReadAllBytesAsync(file, cancellation));
            var (taken, known) = (0, 0);
            foreach (var batch in read.Entries.Chunk(BatchEntries))
            {
                var appended = await store.AppendAsync([.. batch.Select(ReceivedEntry.Of)], cancellation: cancellation);
                (taken, known) = (taken + appended.Taken, known + appended.Known);
            }

            return new ImportedFile(file, taken, known, read.BadLineCount, read.BadLines is [var first, ..] ? $"Line {first.Number}: {first.Sentence}" : null);
        }
        catch (RefusalException e)
        {
            return new ImportedFile(file, 0, 0, 0, e.Message);
        }
    }
}
