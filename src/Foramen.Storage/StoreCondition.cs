namespace Foramen.Storage;

/// <summary>How the database stands, read back from itself and not from what was asked of it.</summary>
/// <param name="Database">SQLite or PostgreSQL, with its version.</param>
/// <param name="Durability">The settings that decide what a power cut can cost, as the database says them.</param>
/// <param name="KeepsWhatItAcknowledged">Whether they keep every acknowledged entry.</param>
/// <param name="Entries">How many entries it holds.</param>
public sealed record StoreCondition(string Database, string Durability, bool KeepsWhatItAcknowledged, long Entries);
