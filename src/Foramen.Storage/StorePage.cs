namespace Foramen.Storage;

/// <summary>Some entries in order of arrival.</summary>
/// <param name="From">The cursor before them: the one asked for, or the beginning where that means nothing here.</param>
/// <param name="Next">The cursor after them.</param>
/// <param name="More">Whether there are more.</param>
/// <param name="Lines">Their lines.</param>
public sealed record StorePage(StoreCursor From, StoreCursor Next, bool More, IReadOnlyList<byte[]> Lines);
