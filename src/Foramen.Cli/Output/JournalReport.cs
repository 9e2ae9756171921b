namespace Foramen.Cli.Output;

/// <summary>What <c>foramen journal</c> did.</summary>
/// <param name="Command">backup, restore or verify.</param>
/// <param name="Entries">Entries that are whole.</param>
/// <param name="Pictures">Pictures that are whole.</param>
/// <param name="Sha256">SHA-256 over the lines in order; null for a single file.</param>
internal sealed record JournalReport(string Command, long Entries, int Pictures, string? Sha256);
