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
}
