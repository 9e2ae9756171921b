using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Listing;
using static Foramen.Journal.Tests.Bottles.BottleExamples;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Listing;

public class LedgerRowTests
{
    private static readonly Ulid Tall = Id(40_001);
    private static readonly Ulid Box = Id(40_002);
    private static readonly Ulid Day = Id(40_003);
    private static readonly Ulid Basin = Id(40_004);
    private static readonly Ulid Bridge = Id(40_005);

    private static readonly SheetStarted Started = new()
    {
        Sheet = Tall, Name = "elevator", Note = "second try", Camera = CameraId, Paper = Box, Outing = Day,
    };

    private static readonly EntryBody[] Around =
    [
        Square,
        new PaperDefined { Paper = Box, Definition = PaperReading.Unknown("box of June", "negative") },
        new PlaceDefined { Place = Basin, Name = "basin" },
        new PlaceDefined { Place = Bridge, Name = "bridge" },
        new OutingStarted { Outing = Day, Name = "a day in May", Place = Basin },
    ];

    // Loaded in the sixth entry, five minutes after noon; opened in the eighth, closed a minute later. Lighter by 1 and by −0.5: 0.25 on the mean.
    [Fact]
    public void A_row_says_what_was_planned_what_was_done_and_how_it_came_out()
    {
        var row = Row(
            Started,
            new PlanMade { Sheet = Tall, ExposureSeconds = 95, FlashSeconds = 4, Odds = 0.62, LightKelvin = 5600 },
            new HoleOpened { Sheet = Tall },
            new HoleClosed { Sheet = Tall },
            new PrintJudged
            {
                Sheet = Tall, Keeper = false, Note = "tower cut off", Causes = [MishapCause.Frame],
                Tones = [new JudgedTone { Tone = Id(1), LighterByStops = 1 }, new JudgedTone { Tone = Id(2), LighterByStops = -0.5 }],
            });
        Assert.Equal((Tall, 1, "elevator", Noon.AddMinutes(5)), (row.Sheet, row.Number, row.Name, row.LoadedAt));
        Assert.Equal(("a day in May", "basin", "square", "box of June"), (row.Outing, row.Place, row.Camera, row.Paper));
        Assert.Equal((95, 4, 0.62, 60), (row.PlannedSeconds, row.FlashSeconds, row.Odds, row.OpenSeconds));
        Assert.Equal((false, 0.25, "tower cut off"), (row.Keeper, row.LighterByStops, row.Note));
        Assert.Equal([MishapCause.Frame], row.Causes);
        // 5600 K is nearest to the noon of 5500.
        Assert.Equal("noon", row.Light);
    }

    [Fact]
    public void What_was_never_written_down_is_missing()
    {
        var row = Row(new SheetStarted { Sheet = Tall });
        Assert.Equal(new LedgerRow { Sheet = Tall, Number = 1, LoadedAt = Noon.AddMinutes(5) }, row);
    }

    [Fact]
    public void A_sheet_s_own_place_goes_before_its_outing_s_and_a_judgement_s_note_before_its_own()
    {
        Assert.Equal("bridge", Row(Started with { Place = Bridge }).Place);
        Assert.Equal("bridge", Row(Started with { Place = Bridge, Outing = null }).Place);
        Assert.Null(Row(Started with { Place = Id(49_999) }).Place);
        Assert.Equal("second try", Row(Started).Note);
        Assert.Equal("second try", Row(Started, new PrintJudged { Sheet = Tall, Keeper = true }).Note);
        Assert.Null(Row(Started, new PrintJudged { Sheet = Tall, Keeper = true, Tones = [] }).LighterByStops);
    }

    [Fact]
    public void A_hole_that_is_still_open_has_no_time_yet()
        => Assert.Null(Row(Started, new HoleOpened { Sheet = Tall }).OpenSeconds);

    // Lights are known from 1500 to 25 000 K; the journal takes more.
    [Theory]
    [InlineData(1499.0, null)]
    [InlineData(1500.0, "lamp")]
    [InlineData(25_000.0, "blue shade")]
    [InlineData(25_001.0, null)]
    public void A_light_that_no_light_has_is_not_named(double kelvin, string? light)
        => Assert.Equal(light, Row(Started, new PlanMade { Sheet = Tall, ExposureSeconds = 95, LightKelvin = kelvin }).Light);

    // The first was withdrawn and keeps its number; the second is somebody else's and never had one.
    [Fact]
    public void Numbers_are_those_of_all_own_sheets_also_of_withdrawn_ones()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned(
            (0, Mixed),
            (60, new SheetStarted { Sheet = Id(41_001) }),
            (120, new DevelopedIn { Sheet = Id(41_002), Bottle = BottleId, TemperatureCelsius = 20 }),
            (180, new SheetStarted { Sheet = Id(41_003) }),
            (240, new EntryVoided { Entry = Id(2) }))));
        Assert.Equal([(Id(41_003), 2)], LedgerRow.All(ledger).Select(row => (row.Sheet, row.Number)));
        Assert.Equal(2, LedgerRow.Of(ledger, ledger.Sheets.Find(Id(41_003))!).Number);
    }

    private static LedgerRow Row(params EntryBody[] bodies) => Assert.Single(LedgerRow.All(Folded([.. Around, .. bodies])));
}
