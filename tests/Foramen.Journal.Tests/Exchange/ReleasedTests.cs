using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Exchange;

/// <summary>
/// Journals as released versions wrote them, kept for ever under Released/. A file there is never rewritten; a version that writes differently adds one.
/// </summary>
public class ReleasedTests
{
    [Fact]
    [Trait("Promise", "J7")]
    public void Version_0_1_0_opens_whole()
    {
        var file = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Released", "0.1.0.foramen.jsonl"));
        var read = JournalFile.Read(file);
        Assert.Empty(read.BadLines);
        Assert.Equal(26, read.Entries.Count);
        var set = EntrySet.Of(read.Entries);
        Assert.Equal(file, JournalFile.Write(set));

        // What stands in the file, read by eye.
        var ledger = Ledger.Of(set);
        Assert.Empty(ledger.Unused);
        Assert.Equal(1, ledger.VoidCount);
        Assert.Equal(1, ledger.NotUnderstood[new KindVersion("moon.watched", 3)]);
        Assert.Equal(1, ledger.NotUnderstood[new KindVersion("hole.opened", 9)]);
        var sheet = Assert.Single(ledger.Sheets.All);
        Assert.Equal(SheetStep.Done, sheet.Step);
        Assert.Equal(["pale concrete", "brick in shade"], sheet.Tones.Select(tone => tone.Body.Name));
        Assert.Equal([5200, 420], sheet.Tones.Select(tone => tone.Body.LuminanceCandelasPerSquareMetre));
        Assert.Equal(120, sheet.Plan!.Body.ExposureSeconds);
        Assert.Equal(0.35, ledger.CameraOf(sheet)!.Body.HoleDiameterMillimetres);
        Assert.Equal("directPositive", ledger.PaperOf(sheet)!.Body.Kind);
        // Opened at 12:01:59, a quarter of the light from 12:02:06.5, closed at 12:02:18.
        var tally = sheet.TallyAt(Make.Noon.AddHours(1));
        Assert.Equal([(7.5, 0.0), (11.5, -2.0)], tally.Segments.Select(segment => (segment.Seconds, segment.LightStops)));
        Assert.Equal([MishapCause.Light, MishapCause.Motion], sheet.Judgement!.Body.Causes!);
        Assert.Equal(2, ledger.Places.Count);
    }

    [Fact]
    public void The_demo_outing_opens_whole_and_tells_its_story()
    {
        var read = JournalFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "canal-basin.foramen.jsonl")));
        Assert.Empty(read.BadLines);
        Assert.All(read.Entries, entry => Schemas.AssertValid(Schemas.Entry, EntryLine.Write(entry)));
        var ledger = Ledger.Of(EntrySet.Of(read.Entries));
        Assert.Empty(ledger.Unused);
        Assert.Empty(ledger.NotUnderstood);
        Assert.Empty(ledger.Entries.Conflicts);
        Assert.Equal(4, ledger.Sheets.All.Count(sheet => sheet.Step == SheetStep.Done));
        Assert.Equal(SheetStep.Expose, ledger.Sheets.All.Last().Step);
        Assert.Equal(5, ledger.SheetsOf(Assert.Single(ledger.Outings.All).Id).Count());
        foreach (var sheet in ledger.Sheets.All.Where(sheet => sheet.Step == SheetStep.Done))
        {
            // Each hole was closed when its exposure was done.
            var failure = PaperReading.ToPaper(ledger.PaperOf(sheet)!.Body).Failure;
            var tally = Engine.Exposure.ExposureTally.For(failure, Duration.FromSeconds(sheet.Plan!.Body.ExposureSeconds));
            Assert.Equal(1, tally.Progress(sheet.TallyAt(Make.Noon.AddYears(1)).Spans), 0.01);
        }
    }
}
