using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

/// <summary>A Home that answers as the test says, and remembers what it was sent.</summary>
internal sealed class ToldHome : ISyncHome
{
    public ToldHome(ModelHome home)
    {
        OnPull = home.Pull;
        OnPush = home.Push;
    }

    public Func<string, string, byte[]> OnPull { get; init; }

    public Func<byte[], PushAnswer> OnPush { get; init; }

    public int Pulls { get; private set; }

    /// <summary>The batches that came, in order.</summary>
    public List<byte[]> Batches { get; } = [];

    /// <summary>How many entries each of them had.</summary>
    public IEnumerable<int> Sizes => Batches.Select(batch => SyncBatch.Read(batch).Lines.Count);

    public Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Batches.Add(batch);
        return Task.FromResult(OnPush(batch));
    }

    public Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Pulls++;
        return Task.FromResult(OnPull(epoch, cursor));
    }
}
