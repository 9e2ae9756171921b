using System.Text;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Sync;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Sync;

/// <summary>One meeting: what goes each way, in which order, in which portions, and what it says of itself.</summary>
public class SyncRoundTests
{
    private const int PortionBytes = 512 * 1024;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task After_one_meeting_both_hold_the_same_and_the_report_says_what_went_each_way()
    {
        var (home, phone, desk) = (new ModelHome(page: 2), Device(Make.Phone, 1, 5), Device(Make.Desk, 1, 3));
        Assert.Equal(new SyncReport(5, 0, 0), await MeetAsync(phone, new ToldHome(home)));
        Assert.Equal(new SyncReport(3, 5, 0), await MeetAsync(desk, new ToldHome(home)));
        Assert.Equal(new SyncReport(0, 3, 0), await MeetAsync(phone, new ToldHome(home)));
        Assert.Equal(home.Entries, phone.Entries);
        Assert.Equal(home.Entries.ToHashSet(), desk.Entries.ToHashSet());
        Assert.Equal(8, desk.Entries.Count());
    }

    [Fact]
    public async Task What_is_new_at_Home_comes_before_what_is_new_here_goes()
    {
        var (home, desk) = (new ModelHome(page: 2), Device(Make.Desk, 1, 3));
        await MeetAsync(Device(Make.Phone, 1, 5), new ToldHome(home));
        var held = -1;
        await MeetAsync(desk, new ToldHome(home) { OnPush = batch => { held = held < 0 ? desk.Entries.Count() : held; return home.Push(batch); } });
        Assert.Equal(8, held);
    }

    [Fact]
    public async Task Where_nothing_is_new_nothing_is_sent_and_nothing_written()
    {
        var (home, phone) = (new ModelHome(page: 2), Device(Make.Phone, 1, 5));
        await MeetAsync(phone, new ToldHome(home));
        phone.DiesAfter = 0;
        var link = new ToldHome(home);
        // Its own entries, which nobody came between, do not come back either.
        Assert.Equal(new SyncReport(0, 0, 0), await MeetAsync(phone, link));
        Assert.Equal((1, 0), (link.Pulls, link.Batches.Count));
    }

    [Fact]
    public async Task What_arrives_at_Home_between_two_batches_of_a_device_is_not_passed_over()
    {
        var (home, phone, other) = (new ModelHome(page: 10), Device(Make.Phone, 1, 4), Device(Make.Desk, 1, 1));
        var pushes = 0;
        await MeetAsync(
            phone,
            new ToldHome(home)
            {
                OnPush = batch =>
                {
                    if (++pushes == 2)
                    {
                        home.Push(SyncBatch.Write([.. other.Entries.Select(Line)]));
                    }

                    return home.Push(batch);
                },
            },
            batchEntries: 2);
        Assert.Equal(5, home.Entries.Count());
        Assert.Equal(4, phone.Entries.Count());
        await MeetAsync(phone, new ToldHome(home));
        Assert.Equal(home.Entries.ToHashSet(), phone.Entries.ToHashSet());
        Assert.Equal(5, phone.Entries.Count());
    }

    [Theory]
    [InlineData(3, new[] { 3, 3, 1 })]
    [InlineData(7, new[] { 7 })]
    [InlineData(1, new[] { 1, 1, 1, 1, 1, 1, 1 })]
    public async Task Entries_go_in_their_order_and_at_most_so_many_at_once(int most, int[] sizes)
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 7));
        var link = new ToldHome(home);
        await MeetAsync(phone, link, most);
        Assert.Equal(sizes, link.Sizes);
        Assert.Equal(phone.Entries, home.Entries);
    }

    [Fact]
    public async Task Two_hundred_entries_go_at_once_unless_another_number_is_asked_for()
    {
        var (home, phone) = (new ModelHome(page: 1000), Device(Make.Phone, 1, 401));
        var link = new ToldHome(home);
        await SyncRound.RunAsync(phone, link, cancellation: Cancellation);
        Assert.Equal([200, 200, 1], link.Sizes);
    }

    [Fact]
    public async Task Large_entries_go_in_smaller_portions_and_one_that_is_larger_than_a_portion_goes_alone()
    {
        var (home, phone) = (new ModelHome(page: 1000), new ModelDevice());
        int[] bytes = [PortionBytes / 2, PortionBytes / 2, (PortionBytes / 2) + 1, PortionBytes / 2, 2 * PortionBytes - 1000, 400, 400];
        foreach (var (size, i) in bytes.Select((size, i) => (size, i)))
        {
            var entry = Padded(i + 1, size);
            Assert.Equal(size, Line(entry).Length);
            phone.Write(entry);
        }

        var link = new ToldHome(home);
        await MeetAsync(phone, link);
        Assert.Equal([2, 1, 1, 1, 2], link.Sizes);
        Assert.Equal(phone.Entries, home.Entries);
    }

    [Fact]
    public async Task Entries_that_Home_cannot_read_are_left_out_and_counted_once_in_all_meetings()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 7));
        var bad = phone.Entries.Where((_, i) => i is 0 or 3 or 6).ToHashSet();
        var link = new ToldHome(home) { OnPush = batch => Picky(home, bad, batch) };
        Assert.Equal(new SyncReport(4, 0, 3), await MeetAsync(phone, link, 3));
        Assert.Equal(phone.Entries.Where(entry => !bad.Contains(entry)), home.Entries);
        Assert.Equal(new SyncReport(0, 0, 0), await MeetAsync(phone, link, 3));
        Assert.Equal(7, phone.Entries.Count());
    }

    [Fact]
    public async Task Where_Home_can_read_none_of_a_batch_the_next_batch_goes_all_the_same()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 5));
        var bad = phone.Entries.Take(2).ToHashSet();
        var link = new ToldHome(home) { OnPush = batch => Picky(home, bad, batch) };
        Assert.Equal(new SyncReport(3, 0, 2), await MeetAsync(phone, link, 2));
        Assert.Equal(phone.Entries.Skip(2), home.Entries);
        Assert.DoesNotContain(0, link.Sizes);
    }

    [Fact]
    public async Task An_entry_that_Home_cannot_read_counts_once_also_where_its_store_was_replaced_meanwhile()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 5));
        var bad = phone.Entries.Where((_, i) => i is 0 or 3).ToHashSet();
        var pushes = 0;
        var link = new ToldHome(home)
        {
            OnPush = batch =>
            {
                // After the first batch, and in the middle of the second.
                if (++pushes == 4)
                {
                    home.GoBack(0, byCopying: false);
                }

                return Picky(home, bad, batch);
            },
        };
        var report = await MeetAsync(phone, link, 2);
        Assert.Equal(2, report.Unsendable);
        Assert.Equal(phone.Entries.Where(entry => !bad.Contains(entry)).ToHashSet(), home.Entries.ToHashSet());
    }

    [Theory]
    [InlineData(HomeRefusal.BadEntry, null)]
    [InlineData(HomeRefusal.BadEntry, -1)]
    [InlineData(HomeRefusal.BadEntry, 3)]
    [InlineData(HomeRefusal.Full, 0)]
    [InlineData(HomeRefusal.Busy, 0)]
    [InlineData(HomeRefusal.NotPaired, null)]
    [InlineData(HomeRefusal.CutShort, null)]
    public async Task Any_other_refusal_ends_the_meeting_as_it_was_said_and_loses_nothing(HomeRefusal why, int? line)
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 6));
        var pushes = 0;
        var said = new HomeRefusedException(why, "No.", line);
        var link = new ToldHome(home) { OnPush = batch => ++pushes == 2 ? throw said : home.Push(batch) };
        var refused = await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, link, 3));
        Assert.Same(said, refused);
        Assert.Equal((why, line, "No."), (refused.Why, refused.Line, refused.Message));
        Assert.Equal((2, 3), (pushes, home.Entries.Count()));

        // What was acknowledged stays acknowledged; the rest goes when they meet again.
        var again = new ToldHome(home);
        Assert.Equal(new SyncReport(3, 0, 0), await MeetAsync(phone, again, 3));
        Assert.Equal(phone.Entries, home.Entries);
    }

    [Fact]
    public async Task A_refusal_to_tell_what_is_new_ends_the_meeting_before_anything_is_sent()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 2));
        var said = new HomeRefusedException(HomeRefusal.NotPaired, "Pair anew.");
        var link = new ToldHome(home) { OnPull = (_, _) => throw said };
        Assert.Same(said, await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, link)));
        Assert.Equal(SyncMark.Never, phone.Mark);
        Assert.Empty(link.Batches);
    }

    [Fact]
    public async Task A_meeting_that_is_called_off_ends_between_two_batches()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 6));
        using var source = new CancellationTokenSource();
        var link = new ToldHome(home) { OnPush = batch => { source.Cancel(); return home.Push(batch); } };
        await Assert.ThrowsAsync<OperationCanceledException>(() => SyncRound.RunAsync(phone, link, 2, source.Token));
        Assert.Equal(phone.Entries.Take(2), home.Entries);
        await Assert.ThrowsAsync<OperationCanceledException>(() => SyncRound.RunAsync(phone, link, 2, source.Token));
        Assert.Equal(1, link.Pulls);
        Assert.Equal(new SyncReport(4, 0, 0), await MeetAsync(phone, new ToldHome(home)));
    }

    internal static ModelDevice Device(DeviceId name, int first, int count)
    {
        var device = new ModelDevice();
        foreach (var i in Enumerable.Range(first, count))
        {
            device.Write(Make.By(name, i, i, new OutingStarted { Outing = Make.Id(i), Name = $"{name} {i}" }));
        }

        return device;
    }

    internal static Task<SyncReport> MeetAsync(ModelDevice device, ISyncHome home, int batchEntries = 10)
        => SyncRound.RunAsync(device, home, batchEntries, TestContext.Current.CancellationToken);

    internal static byte[] Line(Entry entry) => Encoding.UTF8.GetBytes(EntryLine.Write(entry));

    private static PushAnswer Picky(ModelHome home, HashSet<Entry> bad, byte[] batch)
    {
        var at = SyncBatch.Read(batch).Lines.ToList().FindIndex(line => bad.Contains(line.Entry));
        return at >= 0 ? throw new HomeRefusedException(HomeRefusal.BadEntry, "Not this one.", at) : home.Push(batch);
    }

    // An entry whose line has exactly so many bytes.
    private static Entry Padded(int sequence, int bytes)
    {
        var bare = Of("");
        return Of(new string('x', bytes - Line(bare).Length));

        Entry Of(string padding) => Entry.CreateRaw(Make.Id(sequence), Make.Phone, sequence, Make.Noon, "moon.watched", 1, $$"""{"p":"{{padding}}"}""");
    }
}
