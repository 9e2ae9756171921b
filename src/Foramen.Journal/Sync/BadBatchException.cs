namespace Foramen.Journal.Sync;

/// <summary>A batch that cannot be used: cut, damaged or forged. None of it counts.</summary>
/// <param name="sentence">Why, in one sentence.</param>
/// <param name="line">Which entry, from 0; null where it is about the whole.</param>
/// <param name="cause">What was behind it.</param>
public sealed class BadBatchException(string sentence, int? line = null, Exception? cause = null) : Exception(sentence, cause)
{
    /// <summary>Which entry, from 0; null where it is about the whole.</summary>
    public int? Line { get; } = line;
}
