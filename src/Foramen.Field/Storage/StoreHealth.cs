namespace Foramen.Field.Storage;

/// <summary>What the browser says about keeping data; null where it does not say.</summary>
/// <param name="Persisted">Whether it promises to keep the data under pressure.</param>
/// <param name="UsedBytes">Bytes in use.</param>
/// <param name="QuotaBytes">Bytes that may be used.</param>
public sealed record StoreHealth(bool? Persisted, double? UsedBytes, double? QuotaBytes)
{
    /// <summary>Whether less than a tenth of the room is left.</summary>
    public bool NearlyFull => UsedBytes is { } used && QuotaBytes is > 0 and { } quota && used > 0.9 * quota;
}
