using System.Globalization;
using System.Text.Json.Nodes;

namespace Foramen.Cli.Tests.Verbs;

public class OutingVerbTests
{
    private static readonly string Places = Path.Combine(AppContext.BaseDirectory, "demo", "places.geojson");

    private static readonly string[] Midsummer =
    [
        "outing", "--places", Places, "--date", "2024-06-20", "--zone", "+02:00", "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("positive.json"),
        "--from", "07:00", "--to", "21:00", "--cloud", "30",
    ];

    [Fact]
    public async Task A_day_of_windows_and_sheets()
    {
        var json = (await PromptRun.OfAsync([.. Midsummer, "--json"])).Json("outing");
        var windows = json["places"]!.AsArray().SelectMany(place => place!["windows"]!.AsArray()).ToList();
        Assert.NotEmpty(windows);
        Assert.All(windows, one => Assert.True(Instant(one!["end"]) > Instant(one["start"])));
        Assert.InRange(json["sheets"]!.GetValue<int>(), 1, 6);
        Assert.Equal(json["sheets"]!.GetValue<int>() * 0.7, json["sheetsHopedFor"]!.GetValue<double>(), 1e-9);

        // Every exposure lies in a window of its place.
        foreach (var step in json["schedule"]!.AsArray().Where(step => step!["kind"]!.GetValue<string>() == "expose"))
        {
            var place = json["places"]!.AsArray().Single(one => one!["name"]!.GetValue<string>() == step!["place"]!.GetValue<string>());
            Assert.Contains(place!["windows"]!.AsArray(), one => Instant(one!["start"]) <= Instant(step!["start"]) && Instant(one["end"]) >= Instant(step["end"]));
        }
    }

    // Two windows a day, dusk after sunset and dawn before sunrise; at midsummer at 52° north the sun sets at 22:03 by these clocks.
    [Theory]
    [InlineData("EV 4")]
    [InlineData("floodlit")]
    public async Task Sky_and_lamps_balance_at_dusk_and_dawn(string lamplit)
    {
        var json = (await PromptRun.OfAsync([.. Midsummer[..^6], "--lamplit", lamplit, "--json"])).Json("outing");
        foreach (var place in json["places"]!.AsArray())
        {
            var balances = place!["balances"]!.AsArray();
            Assert.Equal(2, balances.Count);
            Assert.InRange(Instant(balances[1]!["from"]).TimeOfDay.TotalHours, 22.1, 23.5);
            Assert.All(balances, one => Assert.InRange((Instant(one!["to"]) - Instant(one["from"])).TotalMinutes, 5, 40));
        }

        var lamp = json["lamplit"]!;
        Assert.Equal(2, lamp["luminanceCdM2"]!.GetValue<double>(), 0.01);
        Assert.True(lamp["shorterSeconds"]!.GetValue<double>() < lamp["exposureSeconds"]!.GetValue<double>());
        Assert.True(lamp["longerSeconds"]!.GetValue<double>() > lamp["exposureSeconds"]!.GetValue<double>());
        Assert.Contains("longer than can be planned", (await PromptRun.OfAsync([.. Midsummer[..^6], "--lamplit", lamplit])).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("candlelight", "What the lamps light is no reading such as EV 4; and of names:")]
    [InlineData("lit", "write enough of one of these")]
    [InlineData("EV 99", "should be between")]
    public async Task Lamps_that_are_not_known_are_refused(string lamplit, string containing)
        => (await PromptRun.OfAsync([.. Midsummer, "--lamplit", lamplit])).IsRefused(containing);

    [Fact]
    public async Task Files_are_handed_on_whole()
    {
        var folder = Directory.CreateTempSubdirectory("foramen-outing-").FullName;
        try
        {
            string In(string name) => Path.Combine(folder, name);
            var run = await PromptRun.OfAsync([.. Midsummer, "--ics", In("a.ics"), "--geojson", In("a.geojson"), "--gpx", In("a.gpx"), "--pdf", In("a.pdf")]);
            Assert.Equal(0, run.ExitCode);
            Assert.StartsWith("BEGIN:VCALENDAR", File.ReadAllText(In("a.ics")), StringComparison.Ordinal);
            Assert.StartsWith("%PDF-1.4", File.ReadAllText(In("a.pdf")), StringComparison.Ordinal);
            Assert.Equal(4, Directory.GetFiles(folder).Length);

            // The places written are places again.
            var again = await PromptRun.OfAsync("outing", "--places", In("a.geojson"), "--date", "2024-06-20");
            Assert.Equal(0, again.ExitCode);
            var fromGpx = await PromptRun.OfAsync("outing", "--places", In("a.gpx"), "--date", "2024-06-20", "--facing", "150deg");
            Assert.Equal(0, fromGpx.ExitCode);

            // One file that cannot be made leaves the others unwritten.
            (await PromptRun.OfAsync("outing", "--places", Places, "--date", "2024-06-20", "--days", "3", "--ics", In("b.ics"), "--pdf", In("b.pdf"))).IsRefused("one day");
            Assert.Equal(4, Directory.GetFiles(folder).Length);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Clocks go forward on the last Sunday of March and back on the last of October in the zone named here; the tz database.
    [Theory]
    [InlineData("2024-03-31", 23)]
    [InlineData("2024-10-27", 25)]
    [InlineData("2024-06-20", 24)]
    public async Task Days_are_as_long_as_the_clocks_make_them(string date, int hours)
    {
        var json = (await PromptRun.OfAsync("outing", "--places", Places, "--date", date, "--zone", "CET", "--json")).Json("outing");
        Assert.Equal(hours, (Instant(json["to"]) - Instant(json["from"])).TotalHours, 1e-6);
    }

    [Fact]
    public async Task An_hour_that_the_clocks_leap_over_is_refused()
        => (await PromptRun.OfAsync("outing", "--places", Places, "--date", "2024-03-31", "--zone", "CET", "--from", "02:30")).IsRefused("leap over");

    [Fact]
    public async Task A_year_of_windows()
    {
        var json = (await PromptRun.OfAsync("outing", "--places", Places, "--date", "2024-01-01", "--days", "366", "--json")).Json("outing");
        Assert.True(json["places"]![0]!["windows"]!.AsArray().Count > 200);
        Assert.Empty(json["schedule"]!.AsArray());
    }

    [Theory]
    [InlineData("2024-02-30", "UTC", "date")]
    [InlineData("1900-01-01", "UTC", "1950")]
    [InlineData("2024-06-20", "Nowhere/Land", "zone")]
    [InlineData("2024-06-20", "+19:00", "zone")]
    public async Task No_such_day_or_zone(string date, string zone, string containing)
        => (await PromptRun.OfAsync("outing", "--places", Places, "--date", date, "--zone", zone)).IsRefused(containing);

    [Theory]
    [InlineData("--longest", "4min", "camera")]
    [InlineData("--cloud", "140", "cloud")]
    [InlineData("--sheets", "0", "sheets")]
    [InlineData("--days", "400", "days")]
    [InlineData("--sky", "green", "hazy")]
    [InlineData("--from", "25:00", "09:30")]
    [InlineData("--forecast", "no-such-file.csv", "forecast")]
    public async Task Absurd_wishes_are_refused(string option, string value, string containing)
        => (await PromptRun.OfAsync("outing", "--places", Places, "--date", "2024-06-20", option, value)).IsRefused(containing);

    [Fact]
    public async Task A_missing_or_foreign_file_of_places_is_refused()
    {
        (await PromptRun.OfAsync("outing", "--places", "no-such-places.gpx", "--date", "2024-06-20")).IsRefused("no file of places");
        (await PromptRun.OfAsync("outing", "--places", PromptRun.Demo, "--date", "2024-06-20")).IsRefused("neither JSON, GeoJSON nor GPX");
    }

    private static DateTimeOffset Instant(JsonNode? node) => DateTimeOffset.Parse(node!.GetValue<string>(), CultureInfo.InvariantCulture);
}
