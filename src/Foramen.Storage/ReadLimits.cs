namespace Foramen.Storage;

/// <summary>How much one reading gives.</summary>
/// <param name="Entries">Most entries.</param>
/// <param name="Bytes">Most bytes of lines; one entry is given in any case.</param>
public sealed record ReadLimits(int Entries, int Bytes)
{
    /// <summary>2 000 entries or 1 MiB.</summary>
    public static ReadLimits Usual { get; } = new(2_000, 1_048_576);
}
