namespace Foramen.Journal.Sync;

/// <summary>A device's own store, as far as a meeting with Home needs it.</summary>
public interface ISyncDevice
{
    /// <summary>How far it has got with this Home.</summary>
    SyncMark Mark { get; }

    /// <summary>The entries after a position that did not come from this origin, oldest first, at most so many.</summary>
    Task<IReadOnlyList<UnsentEntry>> UnsentAsync(string origin, long afterPosition, int most);

    /// <summary>Keeps entries that came from Home, those that are new, with their origin; when it returns they are stored.</summary>
    Task TakeInAsync(IReadOnlyList<BatchLine> lines, string origin);

    /// <summary>Keeps a mark.</summary>
    Task SaveMarkAsync(SyncMark mark);
}
