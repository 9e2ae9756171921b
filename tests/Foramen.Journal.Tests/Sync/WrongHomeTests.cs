using Foramen.Journal.Sync;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.Sync.SyncRoundTests;

namespace Foramen.Journal.Tests.Sync;

/// <summary>A Home that answers wrongly, or is no longer the one that it was: nothing is lost, and the meeting ends.</summary>
public class WrongHomeTests
{
    public static TheoryData<string, SyncHead, int> NoAnswers => new()
    {
        { "no name of its store", Head with { Epoch = null }, 1 },
        { "an empty name of its store", Head with { Epoch = "" }, 1 },
        { "not from where", Head with { From = null }, 1 },
        { "not to where", Head with { Next = null }, 1 },
        { "not whether there is more", Head with { More = null }, 1 },
        { "more, but nothing now", Head with { More = true }, 0 },
        { "more, but from the same place", Head with { Next = "", More = true }, 1 },
        { "from where nobody asked", Head with { From = "3" }, 1 },
        { "another store, not from its beginning", Head with { Epoch = "other", From = "3" }, 1 },
    };

    private static SyncHead Head => new() { ForamenSync = 1, Entries = 0, Epoch = "store-1", From = "", Next = "7", More = false };

    [Theory]
    [MemberData(nameof(NoAnswers))]
    public async Task An_answer_that_makes_no_sense_ends_the_meeting_and_changes_nothing(string what, SyncHead head, int entries)
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 2));
        var link = new ToldHome(home) { OnPull = (_, _) => SyncBatch.Write(head, [.. Device(Make.Desk, 1, entries).Entries.Select(Line)]) };
        var refused = await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, link));
        Assert.True(refused.Why == HomeRefusal.Failed, what);
        Assert.Equal(SyncMark.Never, phone.Mark);
        Assert.Equal(2, phone.Entries.Count());
        Assert.Equal((1, 0), (link.Pulls, link.Batches.Count));
        await MeetAsync(phone, new ToldHome(home));
        Assert.Equal(phone.Entries, home.Entries);
    }

    [Fact]
    public async Task An_answer_of_nothing_new_is_an_answer()
    {
        var phone = Device(Make.Phone, 1, 0);
        var link = new ToldHome(new ModelHome(page: 10)) { OnPull = (_, _) => SyncBatch.Write(Head with { Next = "" }, []) };
        Assert.Equal(new SyncReport(0, 0, 0), await MeetAsync(phone, link));
        Assert.Equal(new SyncMark("store-1", "", 0), phone.Mark);
    }

    [Fact]
    public async Task An_answer_that_was_cut_or_is_the_page_of_somebody_else_is_asked_for_again_next_time()
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 2));
        await MeetAsync(Device(Make.Desk, 1, 3), new ToldHome(home));
        foreach (var wrong in (Func<byte[], byte[]>[])[whole => whole[..^1], _ => [], _ => [.. "<html>sign in</html>\n"u8]])
        {
            var refused = await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, new ToldHome(home) { OnPull = (epoch, cursor) => wrong(home.Pull(epoch, cursor)) }));
            Assert.Equal(HomeRefusal.CutShort, refused.Why);
            Assert.IsType<BadBatchException>(refused.InnerException);
            Assert.Equal(SyncMark.Never, phone.Mark);
        }

        Assert.Equal(new SyncReport(2, 3, 0), await MeetAsync(phone, new ToldHome(home)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_store_that_was_put_back_gets_everything_again_and_says_so_in_the_mark(bool byCopying)
    {
        var (home, phone, desk) = (new ModelHome(page: 10), Device(Make.Phone, 1, 3), Device(Make.Desk, 1, 4));
        foreach (var device in (ModelDevice[])[phone, desk, phone])
        {
            await MeetAsync(device, new ToldHome(home));
        }

        home.GoBack(1, byCopying);
        Assert.Equal(new SyncReport(7, 1, 0), await MeetAsync(phone, new ToldHome(home)));
        Assert.Equal(phone.Entries.ToHashSet(), home.Entries.ToHashSet());
        Assert.Equal(7, home.Entries.Count());
        // The same name: a second round of comparing with the same store. Another name: the first with another.
        Assert.Equal(byCopying ? ("store-1", 1) : ("store-2", 0), (phone.Mark.Epoch, phone.Mark.Generation));
        Assert.Equal(new SyncReport(0, 0, 0), await MeetAsync(phone, new ToldHome(home)));

        home.GoBack(1, byCopying);
        await MeetAsync(phone, new ToldHome(home));
        Assert.Equal(7, home.Entries.Count());
        Assert.Equal(byCopying ? ("store-1", 2) : ("store-3", 0), (phone.Mark.Epoch, phone.Mark.Generation));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(1000, false)]
    public async Task A_store_that_is_replaced_in_the_middle_of_a_meeting_is_met_anew_but_not_for_ever(int times, bool good)
    {
        var (home, phone) = (new ModelHome(page: 10), Device(Make.Phone, 1, 3));
        var replaced = 0;
        var link = new ToldHome(home)
        {
            OnPush = batch =>
            {
                if (replaced++ < times)
                {
                    home.GoBack(0, byCopying: false);
                }

                return home.Push(batch);
            },
        };
        if (good)
        {
            await MeetAsync(phone, link);
        }
        else
        {
            Assert.Equal(HomeRefusal.Failed, (await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, link))).Why);
            Assert.Equal((3, 3), (link.Pulls, link.Batches.Count));
            await MeetAsync(phone, new ToldHome(home));
        }

        Assert.Equal(phone.Entries.ToHashSet(), home.Entries.ToHashSet());
        Assert.Equal(3, phone.Entries.Count());
    }

    // As if each request met another of several stores behind one address.
    [Fact]
    public async Task A_Home_that_begins_at_its_beginning_again_and_again_is_left()
    {
        var phone = Device(Make.Phone, 1, 3);
        var line = Line(Device(Make.Desk, 1, 1).Entries.Single());
        var pulls = 0;
        var link = new ToldHome(new ModelHome(page: 10))
        {
            OnPull = (_, _) => ++pulls > 100 ? throw new InvalidOperationException("The meeting did not end.") : SyncBatch.Write(Head with { More = true }, [line]),
        };
        Assert.Equal(HomeRefusal.Failed, (await Assert.ThrowsAsync<HomeRefusedException>(() => MeetAsync(phone, link))).Why);
        Assert.Equal(4, phone.Entries.Count());
        Assert.Equal((4, 0), (link.Pulls, link.Batches.Count));
    }
}
