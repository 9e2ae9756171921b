namespace Foramen.Cli.Tests.Verbs;

public class SunVerbTests
{
    private static readonly string[] WorkedExample =
        ["sun", "--at", "2003-10-17T12:30:30-07:00", "--lat", "39.742476", "--lon", "-105.1786", "--elevation", "1830.14"];

    // I. Reda and A. Andreas, NREL/TP-560-34302 (2004), table A5.1: zenith 50.11162°, azimuth 194.34024°; sunrise 06:12:43, transit 11:46:05
    // of the same local day. Rise and set to 2 s: ours include the Sun's parallax.
    [Fact]
    public async Task The_worked_example_of_the_solar_position_algorithm()
    {
        var json = (await PromptRun.OfAsync([.. WorkedExample, "--json"])).Json("sun");
        Assert.Equal(50.1116, json["zenithDeg"]!.GetValue<double>(), 0.01);
        Assert.Equal(194.3402, json["azimuthDeg"]!.GetValue<double>(), 0.01);
        Assert.Equal(90, json["zenithDeg"]!.GetValue<double>() + json["elevationDeg"]!.GetValue<double>(), 1e-9);
        Assert.StartsWith("2003-10-17T06:12:4", json["rise"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.StartsWith("2003-10-17T11:46:0", json["transit"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // The example's own air: 820 mbar and 11 °C.
    [Fact]
    public async Task Air_can_be_said()
    {
        var json = (await PromptRun.OfAsync([.. WorkedExample, "--pressure", "820", "--temperature", "11", "--json"])).Json("sun");
        Assert.Equal(50.11162, json["zenithDeg"]!.GetValue<double>(), 0.0003);
    }

    [Fact]
    public async Task In_words()
    {
        var run = await PromptRun.OfAsync(WorkedExample);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("rises 06:13, highest 11:46, sets 17:", run.Output, StringComparison.Ordinal);
        Assert.Contains("Never look at the sun", run.Output, StringComparison.Ordinal);
    }

    // Beyond the polar circle in June the Sun does not set; geography books.
    [Theory]
    [InlineData("2024-06-20T12:00Z", "stays up")]
    [InlineData("2024-12-20T12:00Z", "stays down")]
    public async Task Polar_day_and_night(string at, string day)
    {
        var json = (await PromptRun.OfAsync("sun", "--at", at, "--lat", "78", "--lon", "15", "--json")).Json("sun");
        Assert.Equal(day, json["day"]!.GetValue<string>());
        Assert.Null(json["rise"]);
        Assert.NotNull(json["transit"]);
    }

    [Theory]
    [InlineData("2024-06-20T14:05:00", "52.3", "5.1", "offset")]
    [InlineData("20 June", "52.3", "5.1", "2024-06-20T14:05:00+02:00")]
    [InlineData("2024-02-30T14:05:00Z", "52.3", "5.1", "no such day")]
    [InlineData("1900-06-20T14:05:00Z", "52.3", "5.1", "1950 to 2050")]
    [InlineData("2024-06-20T14:05:00Z", "-105.1", "39.7", "swapped")]
    [InlineData("2024-06-20T14:05:00Z", "520", "5.1", "latitude")]
    [InlineData("2024-06-20T14:05:00Z", "52.3", "361", "longitude")]
    [InlineData("2024-06-20T14:05:00Z", "NaN", "5.1", "latitude")]
    [InlineData("2024-06-20T14:05:00Z", "north", "5.1", "--help")]
    public async Task What_is_no_instant_or_place_is_refused(string at, string latitude, string longitude, string containing)
        => (await PromptRun.OfAsync("sun", "--at", at, "--lat", latitude, "--lon", longitude)).IsRefused(containing);

    [Theory]
    [InlineData("--elevation", "20000", "height above sea level")]
    [InlineData("--pressure", "5", "air pressure")]
    [InlineData("--temperature", "451", "air temperature")]
    public async Task Absurd_air_is_refused(string option, string value, string containing)
        => (await PromptRun.OfAsync("sun", "--at", "2024-06-20T14:05:00Z", "--lat", "52.3", "--lon", "5.1", option, value)).IsRefused(containing);
}
