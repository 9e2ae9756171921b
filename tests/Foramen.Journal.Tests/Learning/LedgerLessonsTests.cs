using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Journal.Tests.Learning;

public sealed class LedgerLessonsTests
{
    private static Ledger Demo { get; } = Ledger.Of(EntrySet.Of(
        JournalFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "canal-basin.foramen.jsonl"))).Entries));

    [Fact]
    public void Every_judged_sheet_teaches_or_is_listed_with_the_reason()
    {
        var lessons = LedgerLessons.Of(Demo);
        var judged = Demo.Sheets.All.Count(sheet => sheet is { Withdrawn: false, Judgement: not null });
        Assert.True(judged > 0);
        Assert.Equal(judged, lessons.Keepers.Count);
        Assert.Equal(judged, lessons.Evidence.Count + lessons.LeftOut.Count);
        Assert.All(lessons.Evidence, one => Assert.NotNull(Demo.Sheets.Find(lessons.SheetOf[one.Id])));
    }

    // What the label says of itself is what a belief about it begins with.
    [Fact]
    public void The_spread_of_a_box_s_label_is_that_of_its_definition()
    {
        foreach (var one in LedgerLessons.Of(Demo).Evidence)
        {
            var sheet = Demo.Sheets.Find(LedgerLessons.Of(Demo).SheetOf[one.Id])!;
            var paper = Demo.Papers.Find(sheet.Started!.Body.Paper!.Value)!.Current.Body;
            Assert.Equal(paper.Speed.SdStops, one.LabelSpread?.Value);
            Assert.Equal(paper.Failure?.ExponentSd, one.FailureSpread?.Value);
        }
    }

    // An entry that touches one sheet leaves the lessons of the others as they are, and what comes out is what all at once gives.
    [Fact]
    public void What_has_not_changed_is_not_worked_out_again()
    {
        var earlier = LedgerLessons.Of(Demo);
        var judged = Demo.Sheets.All.Last(sheet => sheet.Judgement is not null);
        var at = new DateTimeOffset(2026, 5, 10, 9, 0, 0, TimeSpan.Zero);
        var after = Demo.With(Entry.Create(Ulid.From(at, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]), DeviceId.Parse("another"), 1, at, judged.Judgement!.Body with { Keeper = !judged.Judgement.Body.Keeper }));
        var (again, fresh) = (LedgerLessons.Of(after, earlier), LedgerLessons.Of(after));
        Assert.Equal(fresh.Evidence.Select(one => one.Id), again.Evidence.Select(one => one.Id));
        Assert.Equal(fresh.LeftOut, again.LeftOut);
        Assert.All(fresh.Evidence.Zip(again.Evidence), pair => Assert.Equal(pair.First with { Tones = pair.Second.Tones }, pair.Second));
        Assert.Equal(earlier.Evidence.Count - 1, earlier.Evidence.Count(one => again.Evidence.Any(kept => ReferenceEquals(kept, one))));
        Assert.True(earlier.Evidence.Count > 2);
    }
}
