namespace Foramen.Journal.Entries;

/// <summary>Entries that cannot all be right. Nothing is dropped; this says so.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Entries">The entries, the one that counts first where only one does.</param>
/// <param name="Sentence">What is wrong, for the user.</param>
public sealed record EntryConflict(EntryConflictKind Kind, IReadOnlyList<Entry> Entries, string Sentence);
