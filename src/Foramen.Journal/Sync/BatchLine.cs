using Foramen.Journal.Entries;

namespace Foramen.Journal.Sync;

/// <summary>An entry of a batch, checked against its hash, and its line as it came.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Line">Its line in UTF-8, without its end.</param>
public sealed record BatchLine(Entry Entry, byte[] Line);
