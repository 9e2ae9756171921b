namespace Foramen.Storage;

/// <summary>What a store or a backup holds, in two figures.</summary>
/// <param name="Entries">How many entries.</param>
/// <param name="Sha256">SHA-256 over the lines in order, each with a line break behind it; lower-case hexadecimal.</param>
public sealed record StoreDigest(long Entries, string Sha256);
