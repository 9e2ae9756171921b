using System.Security.Cryptography;
using System.Text;
using BenchmarkDotNet.Attributes;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;

namespace Foramen.Benchmarks;

/// <summary>A bottle with a thousand sheets, topped up after each: from the ledger to forecast, from bare events to forecast, and from the journal's entries.</summary>
public class BathBenchmarks
{
    private const int Sheets = 1000;

    private static readonly DateTimeOffset Noon = new(2026, 5, 9, 12, 0, 0, TimeSpan.FromHours(2));

    private List<Entry> entries = [];
    private List<BottleEvent> events = [];
    private Ledger ledger = Ledger.Empty;
    private Ulid bottle;

    [GlobalSetup]
    public void Prepare()
    {
        bottle = Id("bottle");
        var (camera, paper, one, two) = (Id("camera"), Id("paper"), Id("one"), Id("two"));
        var bodies = new List<EntryBody>
        {
            new CameraDefined
            {
                Camera = camera,
                Definition = new CameraDefinition
                {
                    Name = "box", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
                },
            },
            new PaperDefined { Paper = paper, Definition = PaperReading.Unknown("paper", "directPositive") },
            new BottleMixed { Bottle = bottle, Contents = BottleContents.Developer, Name = "bottle", VolumeMillilitres = 300, TemperatureCelsius = 20 },
        };
        events = [];
        for (var n = 0; n < Sheets; n++)
        {
            var sheet = Id($"sheet {n}");
            bodies.AddRange(
            [
                new SheetStarted { Sheet = sheet, Camera = camera, Paper = paper },
                new PlanMade { Sheet = sheet, ExposureSeconds = 60, Tones = [new() { Tone = one, Density = 0.4, FromAimStops = 0 }, new() { Tone = two, Density = 1.2, FromAimStops = 0 }] },
                new DevelopedIn { Sheet = sheet, Bottle = bottle, TemperatureCelsius = 20 },
                new BottleToppedUp { Bottle = bottle, PouredMillilitres = 28.5, FreshMillilitres = 30 },
                new PrintJudged { Sheet = sheet, Keeper = true, Tones = [new() { Tone = one, LighterByStops = 0.5 }] },
            ]);
            events.AddRange(
            [
                new TimePassed(Duration.FromSeconds(900), false, Temperature.FromCelsius(20)),
                new SheetDeveloped(Area.FromSquareCentimetres(129.54), Density.FromValue(0.7), Volume.FromMillilitres(1.5)),
                new PouredAway(Volume.FromMillilitres(28.5)),
                new FreshAdded(Volume.FromMillilitres(30)),
            ]);
        }

        var device = DeviceId.Parse("bench");
        entries = [.. bodies.Select((body, n) => Entry.Create(Id($"entry {n}"), device, n + 1, Noon.AddSeconds(180 * n), body))];
        ledger = Ledger.Of(EntrySet.Of(entries));
    }

    [Benchmark]
    public int FromTheLedger() => Forecast(ledger);

    [Benchmark]
    public int FromBareEvents() => BottleAdvice.For(
        DeveloperBottle.Fill(DeveloperProfile.Paper, Volume.FromMillilitres(300), Volume.FromMillilitres(150)).After(events)).SheetsLeft!.Sheets.Middle;

    [Benchmark]
    public int FromTheEntries() => Forecast(Ledger.Of(EntrySet.Of(entries)));

    private static Ulid Id(string name) => Ulid.From(Noon, SHA256.HashData(Encoding.UTF8.GetBytes(name)).AsSpan(0, Ulid.ChanceBytes));

    private int Forecast(Ledger from)
    {
        var account = DeveloperAccount.Of(from, from.Bottles.Find(bottle)!, Noon.AddDays(10));
        return account.Advice().SheetsLeft!.Sheets.Middle + account.Now.Sheets;
    }
}
