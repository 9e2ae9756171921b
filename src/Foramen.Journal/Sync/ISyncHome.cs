namespace Foramen.Journal.Sync;

/// <summary>Home, as a device reaches it. Every call may fail anywhere, also after Home has done what was asked.</summary>
public interface ISyncHome
{
    /// <summary>Sends a batch; answers after Home has committed it.</summary>
    /// <exception cref="HomeRefusedException">It did not come to that, as far as this device knows.</exception>
    Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation);

    /// <summary>Asks for what arrived after a cursor: a batch with Home's head.</summary>
    /// <exception cref="HomeRefusedException">Nothing came.</exception>
    Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation);
}
