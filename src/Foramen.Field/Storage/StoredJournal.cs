namespace Foramen.Field.Storage;

/// <summary>What was read from the store.</summary>
/// <param name="Device">The device's name; empty where only the rest was read.</param>
/// <param name="Sequence">The last number the device has used.</param>
/// <param name="Lines">The lines, oldest first.</param>
public sealed record StoredJournal(string Device, long Sequence, IReadOnlyList<StoredLine> Lines);
