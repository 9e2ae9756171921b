namespace Foramen.Storage.Model;

/// <summary>A sheet that a member of a workshop began: the member sees whatever is written of it.</summary>
internal sealed class StoredOwnSheet
{
    public int DeviceId { get; set; }

    /// <summary>The sheet's id, 16 bytes.</summary>
    public required byte[] Sheet { get; set; }
}
