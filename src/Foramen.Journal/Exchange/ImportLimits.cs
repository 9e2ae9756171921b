namespace Foramen.Journal.Exchange;

/// <summary>How much an import takes in. What lies beyond is listed, not read.</summary>
/// <param name="MaxLineBytes">Longest line, bytes.</param>
/// <param name="MaxEntries">Most entries.</param>
/// <param name="MaxListed">Most bad lines that are listed one by one; the others are only counted.</param>
public sealed record ImportLimits(int MaxLineBytes = 1_048_576, int MaxEntries = 1_000_000, int MaxListed = 1_000)
{
    /// <summary>The limits of the journal format: lines of 1 MiB, a million entries.</summary>
    public static ImportLimits Usual { get; } = new();
}
