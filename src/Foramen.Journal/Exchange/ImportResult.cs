using Foramen.Journal.Entries;

namespace Foramen.Journal.Exchange;

/// <summary>What a journal file holds: what is good, and what is not. Nothing has been done with it yet.</summary>
/// <param name="FormatVersion">The version in the header; zero where the header is damaged.</param>
/// <param name="WithoutPlaces">Whether the header says that places were removed.</param>
/// <param name="Entries">The good entries, in the order of the file.</param>
/// <param name="BadLines">The first bad lines, in the order of the file.</param>
/// <param name="BadLineCount">How many lines are bad in all.</param>
public sealed record ImportResult(
    int FormatVersion, bool WithoutPlaces, IReadOnlyList<Entry> Entries, IReadOnlyList<BadLine> BadLines, int BadLineCount);
