namespace Foramen.Storage.Model;

/// <summary>One entry of the journal at home: its line byte for byte, and what is needed to find it.</summary>
internal sealed class StoredEntry
{
    /// <summary>In which order it arrived, from 1; rises with every commit, may have gaps.</summary>
    public long Arrival { get; set; }

    /// <summary>
    /// Drawn anew for every append: together with the arrival it names a state of the store, also after the store was put back to an earlier day and other
    /// entries took the old numbers.
    /// </summary>
    public long Mark { get; set; }

    /// <summary>The entry's id, 16 bytes, most significant first: ids of one day lie side by side in the index.</summary>
    public required byte[] EntryId { get; set; }

    /// <summary>SHA-256 of the canonical bytes. With the id it is the key: other content under the same id is kept beside it.</summary>
    public required byte[] Hash { get; set; }

    /// <summary>The entry's kind.</summary>
    public required string Kind { get; set; }

    /// <summary>Which paired device brought it first; null where it came from this machine.</summary>
    public int? BroughtBy { get; set; }

    /// <summary>What it is about, 16 bytes: the entry that it voids or amends, else the sheet that it speaks of; null where there is neither.</summary>
    public byte[]? About { get; set; }

    /// <summary>The line in UTF-8, without its end.</summary>
    public required byte[] Line { get; set; }
}
