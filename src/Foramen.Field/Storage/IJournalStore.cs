namespace Foramen.Field.Storage;

/// <summary>Where the journal lies on this device. An append is acknowledged only when it is on its way to the disk.</summary>
public interface IJournalStore
{
    /// <summary>Opens, naming the device the first time, and reads everything.</summary>
    /// <param name="newDevice">The name to take where this device has none yet.</param>
    /// <exception cref="StoreRefusedException">The browser keeps nothing here.</exception>
    Task<StoredJournal> OpenAsync(string newDevice);

    /// <summary>What has been appended after a position, by another tab too.</summary>
    /// <exception cref="StoreRefusedException">It could not be read.</exception>
    Task<StoredJournal> ReadAfterAsync(long position);

    /// <summary>Appends lines whole or not at all, in one transaction with the device's count.</summary>
    /// <param name="firstSequence">The number of the first line, one more than the device's count; or 0 for entries of other devices.</param>
    /// <param name="lines">The entries, one line each.</param>
    /// <param name="origin">The Home they came from; empty where they came from none.</param>
    /// <returns>The last position; or null if another tab wrote first and the count must be read anew.</returns>
    /// <exception cref="StoreRefusedException">Nothing was written; the reason says why.</exception>
    Task<long?> AppendAsync(long firstSequence, IReadOnlyList<string> lines, string origin = "");

    /// <summary>A small text kept beside the journal; empty where there is none.</summary>
    Task<string> ReadNoteAsync(string name);

    /// <summary>Keeps a small text beside the journal.</summary>
    /// <exception cref="StoreRefusedException">It was not kept.</exception>
    Task KeepNoteAsync(string name, string text);

    /// <summary>What the browser promises about keeping the data.</summary>
    Task<StoreHealth> HealthAsync();

    /// <summary>Asks the browser to keep the data under pressure.</summary>
    Task<StoreHealth> PersistAsync();

    /// <summary>Another tab has appended.</summary>
    event Action? AppendedElsewhere;
}
