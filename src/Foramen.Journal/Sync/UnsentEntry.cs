namespace Foramen.Journal.Sync;

/// <summary>An entry that Home has not acknowledged.</summary>
/// <param name="Position">Its position in the device's store.</param>
/// <param name="Line">Its line in UTF-8.</param>
public sealed record UnsentEntry(long Position, byte[] Line);
