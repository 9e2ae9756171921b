using System.Buffers.Binary;
using System.Text.Json.Nodes;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Tests.Verbs;

/// <summary>
/// The bottle of these tests can be reckoned by hand: 300 ml at 2/3 m²/l, sheets of 100 × 100 mm at the reference density 0.7, nothing lost with time, so each
/// takes e = 0.01/(2/3 · 0.3) = 0.05 of it.
/// </summary>
public sealed class BathVerbTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 9, 12, 0, 0, TimeSpan.FromHours(2));
    private static readonly Ulid Bottle = Id(1);

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-bath-");

    public void Dispose() => directory.Delete(recursive: true);

    // r = 30/300 = 0.10 and e = 0.05: multiplicative a ← (1 − r)(1 − e)a + r from 1 gives 0.7032 after 20 sheets, additive a ← (1 − r)(a − e) + r gives
    // 0.6047; in the end r/(1 − (1 − r)(1 − e)) = 0.1/0.145 = 0.6897 and 1 − 0.05·0.9/0.1 = 0.55 (geometric series, any textbook). The harsh
    // bound has e = 0.05·5.7/4 = 0.07125: 1 − 0.64125·(1 − 0.9^20) = 0.4367; the gentle one e = 0.05·5.7/8 = 0.035625, multiplicative:
    // 0.1/0.1320625 = 0.75722 in the end, and 0.75722 + 0.24278·0.8679375^20 = 0.7715.
    [Fact]
    public async Task The_steady_case_matches_the_closed_form()
    {
        var json = await ReportAsync(Mixed, Enumerable.Range(0, 20).SelectMany(n => Sheet(n).Append(ToppedUp(30, 30))));
        Assert.Equal(0.65395, Number(json, "activity", "middle"), 0.0001);
        Assert.Equal(0.4367, Number(json, "activity", "low"), 0.0001);
        Assert.Equal(0.7715, Number(json, "activity", "high"), 0.0001);
        // 75 s over the activity; the lower bound of the activity stops at the limit of 0.6.
        Assert.Equal(75 / 0.65395, Number(json, "developSeconds", "middle"), 0.02);
        Assert.Equal(75 / 0.7715, Number(json, "developSeconds", "low"), 0.02);
        Assert.Equal(75 / 0.6, Number(json, "developSeconds", "high"), 0.02);
        Assert.Equal(0.55, Number(json, "steady", "additive"), 1e-9);
        Assert.Equal(0.1 / 0.145, Number(json, "steady", "multiplicative"), 1e-9);
        // The middle settles at (0.55 + 0.6897)/2 = 0.6198, above 0.6, so it does not end; the harsh bound has ended already.
        Assert.Equal((0, 1000), ((int)json["sheetsLeft"]!["low"]!, (int)json["sheetsLeft"]!["middle"]!));
        Assert.Equal("topUp", (string)json["advice"]!["action"]!);
        Assert.Equal("refresh", (string)json["advice"]!["way"]!);
        Assert.Equal(600, Number(json, "volume", "addedMl"), 1e-9);
        Assert.Equal(300, Number(json, "volume", "nowMl"), 1e-9);
    }

    // Nothing topped up: after n sheets 1 − 0.05 n and 0.95^n. The mean is 0.632 after 8 sheets and 0.590 after 9, so 9 sheets in all; harsh 0.64 after 5 and
    // 0.57 after 6: 6 in all; gentle 0.964375^14 = 0.602 and ^15 = 0.580: 15 in all. Two have gone.
    [Fact]
    public async Task Sheets_left_without_topping_up()
    {
        var json = await ReportAsync(Mixed, [.. Sheet(1), .. Sheet(2)]);
        Assert.Equal(
            (4, 7, 13, "activity"),
            ((int)json["sheetsLeft"]!["low"]!, (int)json["sheetsLeft"]!["middle"]!, (int)json["sheetsLeft"]!["high"]!, (string)json["sheetsLeft"]!["endedBy"]!));
        Assert.Equal("extend", (string)json["advice"]!["action"]!);
        Assert.Equal("none", (string)json["advice"]!["way"]!);
        Assert.Null(json["steady"]);
        Assert.Equal(2, json["sheets"]!.AsArray().Count);
        Assert.Equal(100, (double)json["sheets"]![0]!["areaCm2"]!, 1e-9);
    }

    // Q10 2: 18 °C makes it 2^0.2 = 1.1487 times longer.
    [Theory]
    [InlineData("18C")]
    [InlineData("64.4 F")]
    public async Task The_temperature_lengthens_the_time(string temperature)
    {
        var json = await ReportAsync(Mixed, [], "--temperature", temperature);
        Assert.Equal(75 * 1.1487, Number(json, "developSeconds", "middle"), 0.01);
        Assert.Equal(75 * 1.1487 / 7.5, (double)json["firstToneSeconds"]!, 0.01);
        Assert.Equal("said", (string)json["temperatureFrom"]!);
    }

    [Fact]
    public async Task A_topping_up_can_be_tried()
    {
        var json = await ReportAsync(Mixed, [.. Sheet(1), .. Sheet(2)], "--top-up", "150ml");
        Assert.Equal(150, Number(json, "volume", "pouredMl"), 1e-9);
        // Half of (0.9 + 0.9025)/2 and half fresh.
        Assert.Equal((0.90125 + 1) / 2, Number(json, "activity", "middle"), 1e-6);
    }

    [Fact]
    public async Task A_bottle_too_weak_for_any_time_is_to_be_replaced()
    {
        var json = await ReportAsync(Mixed, Enumerable.Range(0, 12).SelectMany(n => Sheet(n)));
        Assert.Null(json["developSeconds"]);
        Assert.Equal("replace", (string)json["advice"]!["action"]!);
        Assert.Equal(0, (int)json["sheetsLeft"]!["middle"]!);
    }

    [Fact]
    public async Task The_demo_journal_works_as_the_readme_says()
    {
        var demo = Path.Combine(AppContext.BaseDirectory, "demo", "canal-basin.foramen.jsonl");
        var json = (await PromptRun.OfAsync("bath", "--journal", demo, "--json")).Json("bath");
        Assert.Equal(4, (int)json["sheetsDeveloped"]!);
        Assert.Empty(json["remarks"]!.AsArray());
        Assert.Equal(
            Number(json, "volume", "filledMl") + Number(json, "volume", "addedMl"),
            Number(json, "volume", "nowMl") + Number(json, "volume", "lostMl") + Number(json, "volume", "pouredMl"),
            1e-9);
        Assert.Single(json["fixers"]!.AsArray());
        var words = await PromptRun.OfAsync("bath", "--journal", demo, "--bottle", "half a litre of paper developer", "--temperature", "18C");
        Assert.Equal(0, words.ExitCode);
        Assert.Contains("sheets left", words.Output, StringComparison.Ordinal);
        Assert.Contains("Wear gloves", words.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("without a unit", "--temperature", "68")]
    [InlineData("68 °F meant", "--temperature", "68C")]
    [InlineData("less than nothing", "--top-up", "-30ml")]
    [InlineData("fresh developer is 400", "--top-up", "400ml")]
    [InlineData("not all that the journal says", "--at", "2026-05-09T11:59:00+02:00")]
    [InlineData("without an offset", "--at", "2026-05-09T11:59:00")]
    [InlineData("no bottle of developer “other”", "--bottle", "other")]
    public async Task Bad_questions_are_refused(string containing, params string[] more)
        => (await RunAsync(Mixed, [.. Sheet(1), .. Sheet(2)], more)).IsRefused(containing);

    [Fact]
    public async Task Bad_bottles_are_refused()
    {
        (await RunAsync(Mixed with { VolumeMillilitres = 90 }, [])).IsRefused("needed to cover the sheet");
        var file = Write(Mixed, []);
        var negative = Entry.CreateRaw(
            Id(99), DeviceId.Parse("phone"), 99, Noon.AddHours(1), EntryKind.BottleToppedUp, 1, $$"""{"bottle":"{{Bottle}}","pouredMl":0,"freshMl":-30}""");
        await File.AppendAllTextAsync(file, EntryLine.Write(negative) + "\n", TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync("bath", "--journal", file)).IsRefused("topped up is -30 ml");
        (await PromptRun.OfAsync("bath", "--journal", Path.Combine(directory.FullName, "none.jsonl"))).IsRefused("no journal");
        await File.WriteAllTextAsync(file, "half a litre", TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync("bath", "--journal", file)).IsRefused("journal");
    }

    [Fact]
    public async Task Of_two_bottles_one_must_be_named()
        => (await RunAsync(Mixed, [Mixed with { Bottle = Id(2), Name = "second" }])).IsRefused("“second”");

    [Fact]
    public async Task A_clock_that_went_back_is_said()
    {
        var json = await ReportAsync(Mixed, Sheet(1), extra: file => File.AppendAllText(
            file, EntryLine.Write(Entry.Create(Id(50), DeviceId.Parse("phone"), 50, Noon.AddHours(-1), new BottleWarmthRead { Bottle = Bottle, TemperatureCelsius = 19 })) + "\n"));
        Assert.Contains(json["remarks"]!.AsArray(), remark => ((string)remark!).Contains("clock went back", StringComparison.Ordinal));
        Assert.Equal(19, (double)json["temperatureCelsius"]!);
    }

    private static BottleMixed Mixed => new()
    {
        Bottle = Bottle, Contents = BottleContents.Developer, Name = "little bottle", VolumeMillilitres = 300, CoveringMillilitres = 100, TemperatureCelsius = 20,
        Developer = new DeveloperDefinition { TimeSeconds = 75, CapacitySquareMetresPerLitre = 2.0 / 3, OpenLossPerHour = 0, ClosedLossPerDay = 0 },
    };

    private static CameraDefined Square => new()
    {
        Camera = Id(3),
        Definition = new CameraDefinition
        {
            Name = "square", HoleDiameterMillimetres = 0.3, FocalDistanceMillimetres = 60, SheetWidthMillimetres = 100, SheetHeightMillimetres = 100,
        },
    };

    private static IEnumerable<EntryBody> Sheet(int number) =>
    [
        new SheetStarted { Sheet = Id(1000 + number), Camera = Id(3), Name = $"sheet {number}" },
        new DevelopedIn { Sheet = Id(1000 + number), Bottle = Bottle, TemperatureCelsius = 20, MeanDensity = 0.7, LostMillilitres = 0 },
    ];

    private static BottleToppedUp ToppedUp(double poured, double fresh) => new() { Bottle = Bottle, PouredMillilitres = poured, FreshMillilitres = fresh };

    private static double Number(JsonNode json, string part, string member) => (double)json[part]![member]!;

    private static Ulid Id(int number)
    {
        var chance = new byte[Ulid.ChanceBytes];
        BinaryPrimitives.WriteInt32BigEndian(chance, number);
        return Ulid.From(Noon, chance);
    }

    private async Task<JsonNode> ReportAsync(BottleMixed mixed, IEnumerable<EntryBody> bodies, params string[] more)
        => (await RunAsync(mixed, bodies, ["--json", .. more])).Json("bath");

    private async Task<JsonNode> ReportAsync(BottleMixed mixed, IEnumerable<EntryBody> bodies, Action<string> extra)
    {
        var file = Write(mixed, bodies);
        extra(file);
        return (await PromptRun.OfAsync("bath", "--journal", file, "--json")).Json("bath");
    }

    private Task<PromptRun> RunAsync(BottleMixed mixed, IEnumerable<EntryBody> bodies, params string[] more)
        => PromptRun.OfAsync(["bath", "--journal", Write(mixed, bodies), .. more]);

    private string Write(BottleMixed mixed, IEnumerable<EntryBody> bodies)
    {
        var phone = DeviceId.Parse("phone");
        var entries = ((EntryBody[])[Square, mixed, .. bodies]).Select((body, i) => Entry.Create(Id(5000 + i), phone, i + 1, Noon.AddMinutes(i), body));
        var file = Path.Combine(directory.FullName, "journal" + JournalFile.Extension);
        File.WriteAllBytes(file, JournalFile.Write(entries));
        return file;
    }
}
