namespace Foramen.Journal.Exchange;

/// <summary>When the hash of an entry is compared with its content.</summary>
public enum HashCheck
{
    /// <summary>While reading; a mismatch is refused. For all that comes from outside.</summary>
    Now,

    /// <summary>
    /// Later, by <see cref="Entries.Entry.IsIntact"/>. For a device's own store at the start of the app, where thousands of hashes would keep its user waiting.
    /// </summary>
    Later,
}
