namespace Foramen.Storage.Model;

/// <summary>A device that was paired with this Home. Its token is known here only by its hash.</summary>
internal sealed class StoredDevice
{
    public int Id { get; set; }

    /// <summary>What its owner calls it.</summary>
    public required string Name { get; set; }

    /// <summary>SHA-256 of the token.</summary>
    public required byte[] TokenHash { get; set; }

    public long PairedAtUnixMilliseconds { get; set; }

    public long LastMetUnixMilliseconds { get; set; }

    /// <summary>When its token was taken back; null while it holds.</summary>
    public long? RevokedAtUnixMilliseconds { get; set; }

    /// <summary>The workshop it joined; null for a device of the household, which sees everything. Never changes: who joins or leaves is entered anew.</summary>
    public int? WorkshopId { get; set; }

    /// <summary>How often what a member may see has grown backwards, so that it must compare everything anew.</summary>
    public int View { get; set; }
}
