using System.Text;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Sync;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Sync;

public class SyncBatchTests
{
    private static readonly byte[][] Lines =
    [
        Encoding.UTF8.GetBytes(EntryLine.Write(Make.By(Make.Phone, 1, 0, new OutingStarted { Outing = Make.Id(5), Name = "été" }))),
        Encoding.UTF8.GetBytes(EntryLine.Write(Entry.CreateRaw(Make.Id(9), Make.Desk, 1, Make.Noon, "moon.watched", 7, """{ "phase" : [1.50, "x"], "new":null }"""))),
    ];

    [Fact]
    [Trait("Promise", "J5")]
    public void A_batch_gives_back_every_line_byte_for_byte()
    {
        var (head, lines) = SyncBatch.Read(SyncBatch.Write(new SyncHead { ForamenSync = 1, Entries = 0, Epoch = "e", From = "3", Next = "5", More = false }, Lines));
        Assert.Equal(Lines, lines.Select(line => line.Line));
        Assert.Equal(new SyncHead { ForamenSync = 1, Entries = 2, Epoch = "e", From = "3", Next = "5", More = false }, head);
    }

    [Fact]
    [Trait("Promise", "J10")]
    public void A_batch_cut_at_any_byte_counts_as_none()
    {
        var whole = SyncBatch.Write(Lines);
        for (var length = 0; length < whole.Length; length++)
        {
            Assert.Throws<BadBatchException>(() => SyncBatch.Read(whole.AsSpan(0, length)));
        }
    }

    [Fact]
    public void A_batch_with_any_one_byte_changed_is_refused_or_says_the_same_entries()
    {
        var whole = SyncBatch.Write(Lines);
        var expected = SyncBatch.Read(whole).Lines.Select(line => line.Entry).ToList();
        for (var i = 0; i < whole.Length; i++)
        {
            var changed = whole.ToArray();
            changed[i] ^= 1;
            try
            {
                // A byte in the head's name of a store or in a space between members changes no entry.
                Assert.Equal(expected, SyncBatch.Read(changed).Lines.Select(line => line.Entry));
            }
            catch (BadBatchException e)
            {
                Assert.NotEmpty(e.Message);
            }
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData("null\n")]
    [InlineData("{\"foramenSync\":2,\"entries\":0}\n")]
    [InlineData("{\"foramenSync\":1,\"entries\":-1}\n")]
    [InlineData("{\"foramenSync\":1,\"entries\":2000000000}\n")]
    [InlineData("{\"foramenSync\":1,\"entries\":0}\n{}\n")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[\n")]
    public void What_is_no_batch_is_refused_in_a_sentence(string text)
        => Assert.EndsWith(".", Assert.Throws<BadBatchException>(() => SyncBatch.Read(Encoding.UTF8.GetBytes(text))).Message);

    [Fact]
    public async Task An_entry_that_Home_cannot_read_keeps_no_other_from_it()
    {
        var device = new ModelDevice();
        for (var i = 1; i <= 5; i++)
        {
            device.Write(Make.By(Make.Phone, i, i, new OutingStarted { Outing = Make.Id(i), Name = $"{i}" }));
        }

        var home = new ModelHome(page: 10);
        var report = await SyncRound.RunAsync(device, new Picky(home, device.Entries.ElementAt(2)), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((4, 1), (report.Sent, report.Unsendable));
        Assert.Equal(4, home.Entries.Count());
    }

    private sealed class Picky(ModelHome home, Entry refused) : ISyncHome
    {
        public Task<PushAnswer> PushAsync(byte[] batch, CancellationToken cancellation)
        {
            var bad = SyncBatch.Read(batch).Lines.ToList().FindIndex(line => line.Entry.Equals(refused));
            return bad >= 0 ? throw new HomeRefusedException(HomeRefusal.BadEntry, "not this one", bad) : Task.FromResult(home.Push(batch));
        }

        public Task<byte[]> PullAsync(string epoch, string cursor, CancellationToken cancellation) => Task.FromResult(home.Pull(epoch, cursor));
    }
}
