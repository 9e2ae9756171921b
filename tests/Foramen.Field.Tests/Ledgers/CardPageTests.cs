using System.Text;
using Bunit;
using Foramen.Exif;
using Foramen.Field.Ledgers;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Ledgers;

public sealed class CardPageTests : IDisposable
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xDA, 0, 2, 1, 2, 3, 0xFF, 0xD9];

    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task It_says_how_the_sheet_was_made_and_what_came_of_it()
    {
        var sheet = await JudgedAsync();
        var page = Open(sheet);
        var pairs = page.FindAll("dt").Select(name => name.TextContent).Zip(page.FindAll("dd").Select(value => value.TextContent)).ToDictionary();
        Assert.Equal("1 min 35 s", pairs[Words.Cards.Open]);
        Assert.Equal("4.0 s", pairs[Words.Cards.Flash]);
        Assert.Contains("f/180", pairs[Words.Sheets.Camera], StringComparison.Ordinal);
        Assert.Equal("1 min 10 s", pairs[Words.Cards.Bath(BathKind.Developer)]);
        Assert.Equal(["quay", "light, with detail", "0.35", "0.5 stops too light"], page.FindAll("tbody tr > *").Select(cell => cell.TextContent));
        Assert.Contains("What went wrong: motion.", page.Markup, StringComparison.Ordinal);
        Assert.Contains("A gull on the rail.", page.Markup, StringComparison.Ordinal);
        Assert.Contains(Words.Sheets.NotKept, page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_place_is_said_only_when_it_is_asked_for_on_the_card_and_in_the_file()
    {
        var page = Open(await JudgedAsync());
        Assert.DoesNotContain("52.1", page.Markup, StringComparison.Ordinal);
        await HandOnAsync(page);
        Assert.DoesNotContain("GPS", Encoding.Latin1.GetString(field.Share.Handed!.Value.Bytes), StringComparison.Ordinal);

        page.Find("#with-place").Change(true);
        Assert.Contains("52.1", page.Markup, StringComparison.Ordinal);
        await HandOnAsync(page);
        Assert.Contains("GPSLatitude>52,6.0000N<", Encoding.Latin1.GetString(field.Share.Handed!.Value.Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_picture_goes_out_with_what_was_done()
    {
        var page = Open(await JudgedAsync());
        await HandOnAsync(page);
        var (name, bytes) = field.Share.Handed!.Value;
        var facts = PhotographFactsReader.Read(bytes);
        Assert.Equal("Elevator.jpg", name);
        Assert.Equal(95, facts.ExposureTime!.Value.Seconds, 1e-6);
        Assert.Equal(FieldContext.Noon.ToOffset(TimeSpan.FromHours(2)).DateTime, facts.TakenLocal);
        Assert.Equal(Jpeg[2..], bytes[^(Jpeg.Length - 2)..]);
    }

    [Fact]
    public async Task A_picture_that_cannot_be_written_into_is_refused_in_a_sentence()
    {
        var page = Open(await JudgedAsync());
        field.Pictures.Next = field.Pictures.Next! with { File = [1, 2, 3] };
        await HandOnAsync(page);
        Assert.Contains("neither a JPEG nor a PNG", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Null(field.Share.Handed);
    }

    [Fact]
    public void A_sheet_that_is_not_here_is_said_so()
        => Assert.Contains(Words.Steps.NoSuchSheet, field.Render<CardPage>(parameters => parameters.Add(page => page.SheetText, "gull")).Markup, StringComparison.Ordinal);

    private IRenderedComponent<CardPage> Open(Ulid sheet) => field.Render<CardPage>(parameters => parameters.Add(page => page.SheetText, sheet.ToString()));

    private static Task HandOnAsync(IRenderedComponent<CardPage> page) => page.InvokeAsync(() => page.Find("#hand-picture").ClickAsync(new()));

    private async Task<Ulid> JudgedAsync()
    {
        var sheet = (await field.LoadedSheetAsync()).Id;
        var (place, outing, tone) = (field.Session.NewId(), field.Session.NewId(), field.Session.NewId());
        await field.Session.AppendAsync(
            new PlaceDefined { Place = place, Name = "The quay", LatitudeDegrees = 52.1, LongitudeDegrees = 4.9 },
            new OutingStarted { Outing = outing, Name = "A walk", Place = place });
        var started = field.Session.Ledger.Sheets.Find(sheet)!.Started!.Body;
        await field.Session.AppendAsync(
            started with { Outing = outing },
            new ToneRead { Sheet = sheet, Tone = tone, Name = "quay", LuminanceCandelasPerSquareMetre = 2000, Rendering = WantedRendering.TexturedHighlight },
            new PlanMade { Sheet = sheet, ExposureSeconds = 90, FlashSeconds = 4, Odds = 0.6, Tones = [new PlannedTone { Tone = tone, Density = 0.35 }] },
            new HoleOpened { Sheet = sheet });
        field.Time.Advance(TimeSpan.FromSeconds(95));
        await field.Session.AppendAsync(new HoleClosed { Sheet = sheet }, new BathStarted { Sheet = sheet }, new BathStep { Sheet = sheet, Step = BathKind.Developer, PlannedSeconds = 70 });
        field.Time.Advance(TimeSpan.FromSeconds(70));
        await field.Session.AppendAsync(
            new BathFinished { Sheet = sheet },
            new ScanAdded { Sheet = sheet, ContentHash = new string('a', 64), MediaType = "image/jpeg", WidthPixels = 4, HeightPixels = 3 },
            new PrintJudged { Sheet = sheet, Keeper = false, Tones = [new JudgedTone { Tone = tone, LighterByStops = 0.5 }], Causes = [MishapCause.Motion], Note = "A gull on the rail." });
        field.Pictures.Next = new TakenPicture(new string('a', 64), "image/jpeg", Jpeg, 4, 3, 4, 3, new byte[48]);
        return sheet;
    }
}
