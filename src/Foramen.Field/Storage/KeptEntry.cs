using Foramen.Journal.Entries;

namespace Foramen.Field.Storage;

/// <summary>An entry as it lies in this device's store.</summary>
/// <param name="Position">Its place, rising.</param>
/// <param name="Origin">The Home it came from; empty where it came from none.</param>
/// <param name="Entry">The entry.</param>
public sealed record KeptEntry(long Position, string Origin, Entry Entry);
