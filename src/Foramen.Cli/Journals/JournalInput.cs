using Foramen.Cli.Output;
using Foramen.Engine.Quantities;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;

namespace Foramen.Cli.Journals;

/// <summary>A journal file, folded.</summary>
internal static class JournalInput
{
    private const long LargestBytes = 1L << 30;

    /// <summary>Reads a journal; lines that are damaged are left out with a note.</summary>
    /// <exception cref="RefusalException">No such file, or not a journal.</exception>
    public static Ledger Read(string path, Page page)
    {
        if (!File.Exists(path))
        {
            throw new RefusalException($"There is no journal {path}; export one from the app: a file that ends in {JournalFile.Extension}.");
        }

        if (new FileInfo(path).Length > LargestBytes)
        {
            throw new RefusalException($"{path} is larger than {LargestBytes >> 20} MiB, more than is read here; export a shorter one.");
        }

        var read = JournalFile.Read(File.ReadAllBytes(path));
        if (read.BadLineCount > 0)
        {
            page.Note($"{read.BadLineCount} lines of {path} are damaged and left out; the first says: {read.BadLines[0].Sentence}");
        }

        return Ledger.Of(EntrySet.Of(read.Entries));
    }
}
