using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

/// <summary>A connection that fails at its k-th call: before Home has heard, after Home has done it, or in the middle of the answer.</summary>
/// <param name="home">Home.</param>
/// <param name="failsAt">Which call fails, from 1; 0: none.</param>
/// <param name="how">0: the request is cut, 1: the answer is lost, 2: the answer is cut.</param>
/// <param name="where">Where it is cut, as a part of a thousand.</param>
internal sealed class BadLink(ModelHome home, int failsAt, int how, int where) : ISyncHome
{
    private int calls;

    public Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation)
    {
        if (++calls == failsAt && how == 0)
        {
            // What arrives of it is refused for being cut.
            Assert.Throws<BadBatchException>(() => home.Push(Cut(batch)));
            throw new HomeRefusedException(HomeRefusal.CutShort, "cut");
        }

        var answer = home.Push(batch);
        return calls == failsAt ? throw new HomeRefusedException(HomeRefusal.CutShort, "lost") : Task.FromResult(answer);
    }

    public Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation)
    {
        if (++calls == failsAt && how <= 1)
        {
            throw new HomeRefusedException(HomeRefusal.Away, "away");
        }

        var answer = home.Pull(epoch, cursor);
        return Task.FromResult(calls == failsAt ? Cut(answer) : answer);
    }

    private byte[] Cut(byte[] whole) => whole[..(int)((long)where * whole.Length / 1000)];
}
