namespace Foramen.Field.Storage;

/// <summary>A line of the store.</summary>
/// <param name="Position">Its place, rising.</param>
/// <param name="Line">The entry.</param>
/// <param name="Origin">The Home it came from; empty where it came from none.</param>
public sealed record StoredLine(long Position, string Line, string Origin = "");
