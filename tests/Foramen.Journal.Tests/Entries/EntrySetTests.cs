using CsCheck;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Entries;

public class EntrySetTests
{
    private static readonly Ulid Sheet = Id(901);

    [Fact]
    public void The_generator_makes_what_is_hard()
    {
        var all = 0;
        var equalInstants = 0;
        var clockSetBack = 0;
        var contradictions = 0;
        var copies = 0;
        var usedTwice = 0;
        var voided = 0;
        GenHistory.Histories.Where(history => history.Length >= 10).Sample(
            history =>
            {
                var set = EntrySet.Of(history);
                all++;
                equalInstants += history.GroupBy(entry => entry.At).Any(group => group.Select(entry => entry.Device).Distinct().Skip(1).Any()) ? 1 : 0;
                clockSetBack += history.GroupBy(entry => entry.Device).Any(own => own.Zip(own.Skip(1)).Any(pair => pair.Second.At < pair.First.At)) ? 1 : 0;
                contradictions += set.Conflicts.Any(conflict => conflict.Kind == EntryConflictKind.SameIdOtherContent) ? 1 : 0;
                usedTwice += set.Conflicts.Any(conflict => conflict.Kind == EntryConflictKind.SequenceUsedTwice) ? 1 : 0;
                copies += history.Any(entry => entry.RedactedFrom is not null) ? 1 : 0;
                voided += Foramen.Journal.Fold.Ledger.Of(set).VoidCount > 0 ? 1 : 0;
            },
            iter: Samples.Of(500),
            threads: 1);
        Assert.All(
            [equalInstants, clockSetBack, contradictions, copies, usedTwice, voided],
            count => Assert.True(count > 0.1 * all, $"{count} of {all}"));
    }

    [Fact]
    [Trait("Promise", "J3")]
    public void Any_arrival_any_doubling_and_any_split_give_the_same_set()
        => Gen.Select(GenHistory.Histories, Gen.Int).Sample((history, seed) =>
        {
            var whole = Shown.Set(EntrySet.Of(history));
            Assert.Equal(whole, Shown.Set(Merged(history, seed)));
        });

    [Fact]
    [Trait("Promise", "J2")]
    public void Union_is_idempotent_commutative_and_associative()
        => Gen.Select(GenHistory.Histories, Gen.Int[0, 40], Gen.Int[0, 40]).Sample((history, one, other) =>
        {
            // Overlapping thirds.
            var a = EntrySet.Of(history.Take(one));
            var b = EntrySet.Of(history.Skip(one / 2).Take(other));
            var c = EntrySet.Of(history.Skip(other / 2));
            Assert.Same(a, a.Union(a.All));
            Assert.Equal(Shown.Set(a.Union(b.All)), Shown.Set(b.Union(a.All)));
            Assert.Equal(Shown.Set(a.Union(b.All).Union(c.All)), Shown.Set(a.Union(b.Union(c.All).All)));
        });

    [Fact]
    [Trait("Promise", "J4")]
    public void A_device_keeps_its_own_order_whatever_its_clock_does()
        => Gen.Select(GenHistory.Histories, Gen.Int).Sample((history, seed) =>
        {
            var set = EntrySet.Of(GenHistory.Shuffled(history, seed));
            foreach (var own in set.InOrder.GroupBy(item => item.Entry.Device))
            {
                var numbers = own.Select(item => item.Entry.Sequence).ToList();
                Assert.Equal(numbers.Order(), numbers);
                foreach (var item in own)
                {
                    // The definition itself, in its slow form: the latest instant so far.
                    var latest = own.Where(other => other.Entry.Sequence <= item.Entry.Sequence).Max(other => other.Entry.At.ToUnixTimeMilliseconds());
                    Assert.Equal(latest, item.Order.EffectiveUnixMilliseconds);
                }
            }

            Assert.Equal(set.InOrder.OrderBy(item => item.Order.EffectiveUnixMilliseconds).Select(item => item.Order.EffectiveUnixMilliseconds),
                set.InOrder.Select(item => item.Order.EffectiveUnixMilliseconds));
        });

    [Fact]
    public void Entries_of_two_devices_interleave_by_their_clocks()
    {
        var set = EntrySet.Of(
        [
            By(Phone, 1, 10, new HoleOpened { Sheet = Sheet }),
            By(Desk, 1, 5, new HoleOpened { Sheet = Sheet }),
            By(Phone, 2, -60, new HoleClosed { Sheet = Sheet }),
            By(Desk, 2, 12, new HoleClosed { Sheet = Sheet }),
        ]);
        Assert.Equal(["desk#1", "phone#1", "phone#2", "desk#2"], set.InOrder.Select(item => $"{item.Entry.Device}#{item.Entry.Sequence}"));
    }

    [Fact]
    [Trait("Promise", "J1")]
    public void One_id_with_two_contents_keeps_both_and_says_so()
    {
        var one = By(Phone, 1, 0, new HoleOpened { Sheet = Sheet }, id: 5);
        var other = By(Phone, 1, 0, new HoleClosed { Sheet = Sheet }, id: 5);
        var there = EntrySet.Of([one, other]);
        var back = EntrySet.Of([other]).With(one);
        Assert.Equal(2, there.All.Count());
        Assert.Equal(1, there.Count);
        Assert.Equal(there.Find(Id(5)), back.Find(Id(5)));
        var conflict = Assert.Single(there.Conflicts);
        Assert.Equal(EntryConflictKind.SameIdOtherContent, conflict.Kind);
        Assert.Equal(there.Find(Id(5)), conflict.Entries[0]);
        Assert.True(there.Contains(one) && there.Contains(other));
    }

    [Fact]
    public void A_number_used_twice_keeps_both_and_says_so()
    {
        var set = EntrySet.Of([By(Phone, 1, 0, new HoleOpened { Sheet = Sheet }, id: 5), By(Phone, 1, 9, new HoleClosed { Sheet = Sheet }, id: 6)]);
        Assert.Equal(2, set.Count);
        Assert.Equal(EntryConflictKind.SequenceUsedTwice, Assert.Single(set.Conflicts).Kind);
    }

    // docs/journal-format.md: effective instant, device, number, id, in this order.
    [Fact]
    public void Entries_stand_by_instant_then_device_then_number_then_id()
    {
        EntryOrder[] rising =
        [
            new(1, Phone, 9, Id(9)), new(2, Desk, 9, Id(9)), new(2, Phone, 1, Id(9)), new(2, Phone, 2, Id(1)), new(2, Phone, 2, Id(2)),
        ];
        for (var i = 0; i < rising.Length; i++)
        {
            for (var j = 0; j < rising.Length; j++)
            {
                Assert.Equal(i.CompareTo(j), Math.Sign(rising[i].CompareTo(rising[j])));
                Assert.Equal((i < j, i <= j, i > j, i >= j), (rising[i] < rising[j], rising[i] <= rising[j], rising[i] > rising[j], rising[i] >= rising[j]));
            }
        }
    }

    [Fact]
    public void What_cannot_all_be_right_is_said_in_order_and_in_words()
    {
        Entry[] versions = [.. new[] { 0, 1, 2 }.Select(seconds => By(Phone, 1, seconds, new HoleOpened { Sheet = Sheet }, id: 5))];
        var set = EntrySet.Of(
        [
            .. versions,
            By(Phone, 2, 9, new HoleClosed { Sheet = Sheet }, id: 8),
            By(Phone, 2, 9, new HoleClosed { Sheet = Sheet }, id: 7),
            By(Desk, 3, 9, new HoleClosed { Sheet = Sheet }, id: 10),
            By(Desk, 3, 9, new HoleClosed { Sheet = Sheet }, id: 9),
            By(Desk, 2, 9, new HoleClosed { Sheet = Sheet }, id: 12),
            By(Desk, 2, 9, new HoleClosed { Sheet = Sheet }, id: 11),
        ]);
        Assert.Equal(
            [
                $"Entry {Id(5)} exists in 3 versions; the first by hash counts, and all are kept.",
                "Device desk used its number 2 more than once; it was probably copied or restored.",
                "Device desk used its number 3 more than once; it was probably copied or restored.",
                "Device phone used its number 2 more than once; it was probably copied or restored.",
            ],
            set.Conflicts.Select(conflict => conflict.Sentence));
        Assert.Equal(versions.OrderBy(entry => entry.Hash, StringComparer.Ordinal), set.Conflicts[0].Entries);
        Assert.Equal([Id(11), Id(12)], set.Conflicts[1].Entries.Select(entry => entry.Id));
    }

    // A copy without its places is no rival: the full entry counts, whichever hash is smaller, and nothing is wrong.
    [Fact]
    public void A_shortened_copy_gives_way_to_the_entry_itself_without_a_conflict()
    {
        for (var i = 0; i < 8; i++)
        {
            var full = Entry.CreateRaw(Id(5), Phone, 1, Noon, "a.b", 1, $$"""{"n":{{i}}}""");
            var copy = Entry.CreateRaw(Id(5), Phone, 1, Noon, "a.b", 1, "{}", full.Hash);
            foreach (var set in new[] { EntrySet.Of([full, copy]), EntrySet.Of([copy, full]) })
            {
                Assert.Equal(full, set.Find(Id(5)));
                Assert.True(set.Contains(copy));
                Assert.Empty(set.Conflicts);
            }

            // Without the entry itself the copy is all there is.
            Assert.Equal(copy, EntrySet.Of([copy]).Find(Id(5)));
        }
    }

    [Fact]
    public void Versions_that_were_never_taken_in_are_not_there()
    {
        var versions = new[] { By(Phone, 4, 0, new HoleOpened { Sheet = Sheet }, id: 5), By(Phone, 7, 0, new HoleOpened { Sheet = Sheet }, id: 5) };
        Assert.False(EntrySet.Of(versions).Contains(By(Phone, 8, 0, new HoleOpened { Sheet = Sheet }, id: 5)));
        Assert.False(EntrySet.Of(versions).Contains(By(Phone, 4, 0, new HoleOpened { Sheet = Sheet }, id: 6)));
    }

    // A phone that was copied at its second entry: both seconds take the later of their instants, so that neither depends on the other's id.
    [Fact]
    public void Entries_that_share_a_number_share_the_later_instant()
    {
        var set = EntrySet.Of(
        [
            By(Phone, 2, 20, new HoleOpened { Sheet = Sheet }, id: 6),
            By(Phone, 2, 60, new HoleOpened { Sheet = Sheet }, id: 7),
            By(Phone, 2, 10, new HoleOpened { Sheet = Sheet }, id: 5),
            By(Phone, 1, 5, new HoleOpened { Sheet = Sheet }, id: 9),
        ]);
        Assert.Equal([(Id(9), 5), (Id(5), 60), (Id(6), 60), (Id(7), 60)],
            set.InOrder.Select(item => (item.Entry.Id, (int)((item.Order.EffectiveUnixMilliseconds - Noon.ToUnixTimeMilliseconds()) / 1000))));
        Assert.Empty(EntrySet.Empty.InOrder);
    }

    /// <summary>The history spread over up to four sets in any order, much of it twice, joined in any tree.</summary>
    internal static EntrySet Merged(Entry[] history, int seed)
    {
        var chance = new Random(seed);
        var arriving = GenHistory.Shuffled(history.Concat(history.Where(_ => chance.Next(3) == 0)), seed);
        var sets = new List<EntrySet> { EntrySet.Empty, EntrySet.Empty, EntrySet.Empty, EntrySet.Empty };
        foreach (var entry in arriving)
        {
            var where = chance.Next(sets.Count);
            sets[where] = sets[where].With(entry);
        }

        while (sets.Count > 1)
        {
            var one = chance.Next(sets.Count);
            var set = sets[one];
            sets.RemoveAt(one);
            var other = chance.Next(sets.Count);
            sets[other] = sets[other].Union(set.All);
        }

        return sets[0];
    }
}
