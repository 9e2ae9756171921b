namespace Foramen.Field.Storage;

/// <summary>A line of the store.</summary>
/// <param name="Position">Where it lies; grows with every line.</param>
/// <param name="Line">The entry.</param>
public sealed record StoredLine(long Position, string Line);
