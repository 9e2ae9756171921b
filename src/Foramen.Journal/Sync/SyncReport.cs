namespace Foramen.Journal.Sync;

/// <summary>What a meeting with Home did.</summary>
/// <param name="Sent">Entries that Home acknowledged.</param>
/// <param name="Received">Entries that came from Home, new or not.</param>
/// <param name="Unsendable">Entries that Home could not read and that were left out; they stay on this device.</param>
public sealed record SyncReport(int Sent, int Received, int Unsendable);
