namespace Foramen.Journal.Entries;

/// <summary>How entries can contradict each other.</summary>
public enum EntryConflictKind
{
    /// <summary>One id, several contents: a damaged or forged copy. All are kept; the one with the smallest hash counts.</summary>
    SameIdOtherContent,

    /// <summary>One device gave one number to several entries: an installation was copied or restored. All are kept and all count, by id.</summary>
    SequenceUsedTwice,
}
