using Foramen.Bench;
using Foramen.Engine.Learning;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Journal.Tests.Learning;

/// <summary>The made-up journal that speed is measured with (bench/LongHistory.cs), in small: what is worked out bit by bit is what is worked out at once.</summary>
public sealed class LongHistoryTests
{
    private static readonly IReadOnlyList<Entry> Entries = LongHistory.Of(120);
    private static readonly DateTimeOffset Now = Entries[^1].At.AddDays(1);
    private static readonly Ledger Whole = Ledger.Of(EntrySet.Of(Entries));
    private static readonly LedgerLessons AtOnce = LedgerLessons.Of(Whole);

    [Fact]
    public void The_last_judgement_folded_onto_what_was_known_gives_what_all_at_once_gives()
    {
        var before = Ledger.Of(EntrySet.Of(Entries.Take(Entries.Count - 1)));
        var known = LedgerLessons.Of(before);
        Assert.Equal(119, known.Evidence.Count);
        AssertSame(LedgerLessons.Of(before.With(Entries[^1]), known));
    }

    [Fact]
    public void Sheet_by_sheet_as_they_were_judged_gives_what_all_at_once_gives()
    {
        LedgerLessons? known = null;
        for (var count = 400; count < Entries.Count; count += 400)
        {
            known = LedgerLessons.Of(Ledger.Of(EntrySet.Of(Entries.Take(count))), known);
        }

        AssertSame(LedgerLessons.Of(Whole, known));
    }

    [Fact]
    public void Begun_in_parts_they_are_whole_at_the_end_and_not_before()
    {
        LedgerLessons? begun = null;
        for (var part = 1; part <= 4; part++)
        {
            begun = LedgerLessons.Begun(Whole, begun, 30);
            Assert.Equal(30 * part, begun.Evidence.Count);
            Assert.Equal(part == 4, begun.IsWhole);
        }

        AssertSame(begun!);
    }

    [Fact]
    public void In_any_order_the_beliefs_are_the_same()
    {
        var shuffled = AtOnce.Evidence.ToArray();
        new Random(5).Shuffle(shuffled);
        AssertSame(AtOnce.BeliefsAsOf(Now), Beliefs.From(shuffled, Now));
    }

    // The hidden truth of the first boxes is 0.5 and −0.35 stops off their labels.
    [Fact]
    public void The_journal_teaches_what_it_was_made_with()
    {
        var speeds = AtOnce.BeliefsAsOf(Now).All.Where(belief => belief.Key.Kind == BeliefKind.Speed).ToList();
        Assert.Equal(5, speeds.Count);
        Assert.True(speeds[0].Mean.Value > speeds[1].Mean.Value + 0.4);
    }

    [Fact]
    public void A_file_taken_in_whole_gives_the_ledger_that_its_entries_give_one_by_one()
    {
        var first = Ledger.Of(EntrySet.Of(Entries.Take(200)));
        var whole = first.With(Entries);
        var single = Entries.Skip(200).Aggregate(first, (ledger, entry) => ledger.With(entry));
        Assert.Equal(single.Entries.Count, whole.Entries.Count);
        Assert.Equal(single.Sheets.All.Select(sheet => (sheet.Id, sheet.Step, sheet.History.Count)), whole.Sheets.All.Select(sheet => (sheet.Id, sheet.Step, sheet.History.Count)));
        Assert.Same(whole, whole.With(Entries));
    }

    [Fact]
    public void Sheets_are_numbered_as_they_come()
        => Assert.Equal(Enumerable.Range(1, 120), Whole.Sheets.All.Select(sheet => Whole.NumberOf(sheet.Id)));

    [Fact]
    public void A_sheet_s_own_margin_counts_for_the_odds_of_its_frame()
    {
        var closest = Whole.Sheets.All.MinBy(sheet => SheetLesson.MarginOf(sheet))!;
        var widest = Whole.Sheets.All.MaxBy(sheet => SheetLesson.MarginOf(sheet))!;
        Assert.True(AtOnce.MishapsOf(closest).Frame > AtOnce.MishapsOf(widest).Frame);
        Assert.Equal(AtOnce.Mishaps, AtOnce.MishapsOf(closest with { Frame = null }));
        // Frames were drawn with 2.5 percent off on one axis.
        Assert.InRange(AtOnce.Aiming.Percent, 1.5, 5);
    }

    private static void AssertSame(LedgerLessons lessons)
    {
        Assert.Equal(AtOnce.Evidence.Select(one => one.Id), lessons.Evidence.Select(one => one.Id));
        Assert.All(AtOnce.Evidence.Zip(lessons.Evidence), pair =>
        {
            Assert.Equal(pair.First.Tones, pair.Second.Tones);
            Assert.Equal(pair.First with { Tones = pair.Second.Tones }, pair.Second);
        });
        Assert.Equal(AtOnce.Keepers, lessons.Keepers);
        Assert.Equal(AtOnce.Frames, lessons.Frames);
        AssertSame(AtOnce.BeliefsAsOf(Now), lessons.BeliefsAsOf(Now));
    }

    private static void AssertSame(Beliefs one, Beliefs other)
    {
        Assert.Equal(one.All.Select(belief => belief.Key), other.All.Select(belief => belief.Key));
        Assert.All(one.All.Zip(other.All), pair =>
        {
            Assert.Equal(pair.First.Mean.Value, pair.Second.Mean.Value, 1e-9);
            Assert.Equal(pair.First.Spread.Value, pair.Second.Spread.Value, 1e-9);
        });
        Assert.Equal(one.ScatterFactor, other.ScatterFactor, 1e-9);
        Assert.Equal(one.ReadingFactor, other.ReadingFactor, 1e-9);
        Assert.Equal(one.Tolerance.Factor, other.Tolerance.Factor, 1e-9);
    }
}
