using System.Diagnostics;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests;

/// <summary>Speed only coarsely, so that a busy machine does not fail: what a mistake costs is an order of magnitude.</summary>
public class SpeedTests
{
    private const int Count = 10_000;

    [Fact]
    public void Ten_thousand_entries_fold_at_once_and_the_next_ones_alone()
    {
        var entries = Enumerable.Range(1, Count).Select(i => By(Phone, i, i, Body(i))).ToArray();
        var best = double.PositiveInfinity;
        var ledger = Ledger.Empty;
        for (var run = 0; run < 10; run++)
        {
            // Fresh entries, so that no body has been read before.
            var fresh = entries.Select(Fresh).ToArray();
            var watch = Stopwatch.StartNew();
            ledger = Ledger.Of(EntrySet.Of(fresh));
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        var more = Enumerable.Range(Count + 1, 1000).Select(i => By(Phone, i, i, Body(i))).ToArray();
        var each = Stopwatch.StartNew();
        foreach (var entry in more)
        {
            ledger = ledger.With(entry);
        }

        var appended = each.Elapsed.TotalMilliseconds / more.Length;
        TestContext.Current.SendDiagnosticMessage($"{Count} entries: {best:0.0} ms; one more: {appended * 1000:0} µs");
        Assert.Equal(Count + 1000, ledger.Entries.Count);
        Assert.True(best < 5000, $"folding took {best:0} ms");
        Assert.True(appended < 0.05 * best, $"one more entry took {appended:0.000} ms, all of them {best:0.0} ms");
    }

    private static Entry Fresh(Entry entry)
        => Entry.CreateRaw(entry.Id, entry.Device, entry.Sequence, entry.At, entry.Kind, entry.Version, entry.Body);

    private static EntryBody Body(int i)
    {
        var sheet = Id(1_000_000 + (i / 25));
        return (i % 25) switch
        {
            0 => new SheetStarted { Sheet = sheet, Name = "a sheet" },
            < 8 => new ToneRead { Sheet = sheet, Tone = Id(i), Name = "a tone", LuminanceCandelasPerSquareMetre = i, Rendering = WantedRendering.Mid },
            8 => new PlanMade { Sheet = sheet, ExposureSeconds = 120 },
            9 => new HoleOpened { Sheet = sheet },
            < 20 => new LightChanged { Sheet = sheet, LightStops = -1, Light = LightWord.Cloud },
            20 => new HoleClosed { Sheet = sheet },
            24 => new PrintJudged { Sheet = sheet, Keeper = true },
            _ => new BathStep { Sheet = sheet, Step = BathKind.Fix, PlannedSeconds = 30 },
        };
    }
}
