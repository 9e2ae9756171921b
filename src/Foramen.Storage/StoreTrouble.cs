namespace Foramen.Storage;

/// <summary>Why the store did not do what was asked. Nothing was half done in any case.</summary>
public enum StoreTrouble
{
    /// <summary>Another write holds the database; try again.</summary>
    Busy,

    /// <summary>There is no room left.</summary>
    Full,

    /// <summary>The database cannot be reached, or it ended in the middle; try again.</summary>
    Unreachable,

    /// <summary>The database is damaged, or it is no database of Foramen's.</summary>
    Damaged,

    /// <summary>The database is set up so that an acknowledged entry could be lost in a power cut.</summary>
    Unsafe,

    /// <summary>A restore into it was begun and has not ended.</summary>
    Unfinished,
}
