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

    // What a device sends, byte for byte: Homes and devices of any version must read each other.
    [Fact]
    public void A_batch_on_the_wire_is_a_head_and_a_line_for_each_entry()
    {
        var one = Lines[0];
        Assert.Equal((byte[])[.. "{\"foramenSync\":1,\"entries\":1}\n"u8, .. one, (byte)'\n'], SyncBatch.Write([one]));
        Assert.Equal(
            (byte[])[.. "{\"foramenSync\":1,\"entries\":1,\"epoch\":\"e\",\"from\":\"\",\"next\":\"5\",\"more\":true}\n"u8, .. one, (byte)'\n'],
            SyncBatch.Write(new SyncHead { ForamenSync = 1, Entries = 9, Epoch = "e", From = "", Next = "5", More = true }, [one]));
        Assert.Empty(SyncBatch.Read(SyncBatch.Write([])).Lines);
    }

    [Fact]
    public void A_batch_says_which_of_its_entries_is_bad_and_why()
    {
        var damaged = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Lines[1]).Replace("1.50", "1.51", StringComparison.Ordinal));
        var bad = Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([Lines[0], damaged, Lines[0]])));
        Assert.Equal(1, bad.Line);
        Assert.StartsWith("Entry 2 of the batch: ", bad.Message, StringComparison.Ordinal);
        Assert.EndsWith(bad.InnerException!.Message, bad.Message, StringComparison.Ordinal);
        Assert.Equal(0, Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([damaged]))).Line);
        // A line of nothing is a bad entry, not the end.
        Assert.Equal(1, Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([Lines[0], [], Lines[1]]))).Line);
    }

    [Fact]
    public void A_batch_of_more_or_fewer_entries_than_it_says_is_none_and_blames_no_entry()
    {
        var whole = Encoding.UTF8.GetString(SyncBatch.Write(Lines));
        foreach (var (count, part) in new[] { (0, "more follow"), (1, "more follow"), (3, "cut short"), (5000, "cut short") })
        {
            var bad = Assert.Throws<BadBatchException>(() => SyncBatch.Read(Encoding.UTF8.GetBytes(whole.Replace("\"entries\":2", $"\"entries\":{count}", StringComparison.Ordinal))));
            Assert.Contains(part, bad.Message, StringComparison.Ordinal);
            Assert.Null(bad.Line);
        }
    }

    [Fact]
    public void A_batch_of_five_thousand_entries_is_taken_and_one_of_more_is_not()
    {
        byte[][] lines = [.. Enumerable.Repeat(Lines[0], SyncBatch.MaxEntries)];
        Assert.Equal(5_000, SyncBatch.Read(SyncBatch.Write(lines)).Lines.Count);
        Assert.Contains("at most 5000 entries", Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([.. lines, Lines[0]]))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_one_mebibyte_is_taken_and_a_longer_one_is_not()
    {
        var line = Spaced(Lines[0], 1_048_576);
        Assert.Equal(line, Assert.Single(SyncBatch.Read(SyncBatch.Write([line])).Lines).Line);
        Assert.Contains("1048577 bytes", Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([Spaced(Lines[0], 1_048_577)]))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_of_eight_mebibytes_is_taken_and_a_larger_one_is_not()
    {
        const int Most = 8_388_608;
        byte[][] lines = [.. Enumerable.Repeat(Spaced(Lines[0], 1_048_575), 7), Lines[0]];
        var rest = Most - SyncBatch.Write(lines).Length + Lines[0].Length;
        Assert.Equal(8, SyncBatch.Read(SyncBatch.Write([.. lines[..7], Spaced(Lines[0], rest)])).Lines.Count);
        var bad = Assert.Throws<BadBatchException>(() => SyncBatch.Read(SyncBatch.Write([.. lines[..7], Spaced(Lines[0], rest + 1)])));
        Assert.Contains("8388609 bytes", bad.Message, StringComparison.Ordinal);
    }

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

    // The same line with spaces before its last brace, which say nothing.
    private static byte[] Spaced(byte[] line, int bytes) => [.. line[..^1], .. Enumerable.Repeat((byte)' ', bytes - line.Length), line[^1]];

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
