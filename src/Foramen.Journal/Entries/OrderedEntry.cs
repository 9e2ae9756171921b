namespace Foramen.Journal.Entries;

/// <summary>An entry and where it stands in its set.</summary>
public readonly record struct OrderedEntry(EntryOrder Order, Entry Entry);
