namespace Foramen.Cli.Tests.Verbs;

/// <summary>Cases of the demo scenario, worked by hand beside each.</summary>
public class MotionVerbTests
{
    private static readonly string[] Ground =
        ["--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("positive.json"), "--meter", "EV 12"];

    private static readonly string[] Cyclist = ["passing", "--width", "1.7m", "--speed", "15km/h", "--distance", "20m", "--ratio", "0.1"];

    // 15 km/h are 4.167 m/s: 1.7 m pass in 0.408 s, 0.0034 of two minutes. On the sheet v·f/s: 4.167·63/20 = 13.125 mm/s, 1575 mm in all.
    [Fact]
    public async Task A_cyclist_at_15_km_h_vanishes_in_two_minutes()
    {
        var json = (await RunAsync([.. Cyclist, "--time", "2min", "--json"])).Json("motion");
        Assert.Equal("vanishes", json["verdict"]!.GetValue<string>());
        Assert.Equal(0.0034, json["coveredShare"]!.GetValue<double>(), 1e-6);
        Assert.Equal(1575, json["imagePathMm"]!.GetValue<double>(), 0.5);
        Assert.True(json["standStillSeconds"]!.GetValue<double>() > 0.408);
    }

    [Fact]
    public async Task One_that_stands_still_stays()
    {
        var json = (await RunAsync(["passing", "--width", "1.7m", "--speed", "0m/s", "--distance", "20m", "--ratio", "0.1", "--json"])).Json("motion");
        Assert.Equal("stays", json["verdict"]!.GetValue<string>());
        Assert.Equal(1, json["coveredShare"]!.GetValue<double>());
        Assert.Null(json["hiddenFromSeconds"]);
    }

    // One turn in 20 s for 120 s: 2160°; six spokes: full after 3.33 s; a quarter filled. The whole circle is 2π·0.3 m, on the sheet 1.885·63/6 = 19.79 mm.
    [Fact]
    public async Task The_crank_wheel_becomes_a_disc()
    {
        var json = (await RunAsync(
            ["turning", "--turn", "20s", "--radius", "30cm", "--distance", "6m", "--spokes", "6", "--fill", "0.25", "--ratio", "3", "--time", "120s", "--json"])).Json("motion");
        Assert.Equal(2160, json["arcDeg"]!.GetValue<double>(), 1e-6);
        Assert.Equal(10 / 3.0, json["fullDiscSeconds"]!.GetValue<double>(), 1e-6);
        Assert.Equal(0.25, json["coveredShare"]!.GetValue<double>(), 1e-6);
        Assert.Equal(19.79, json["imagePathMm"]!.GetValue<double>(), 0.005);

        // Brighter than the gaps, so lighter on a direct positive.
        Assert.True(json["tracedDensity"]!.GetValue<double>() < json["backgroundDensity"]!.GetValue<double>());
    }

    [Fact]
    public async Task A_turn_so_slow_that_nothing_moves_is_said()
    {
        var run = await RunAsync(["turning", "--turn", "24h", "--radius", "30cm", "--distance", "6m", "--spokes", "6", "--fill", "0.25", "--ratio", "3", "--time", "120s"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("nothing moves", run.Errors, StringComparison.Ordinal);
        Assert.Contains("stays", run.Output, StringComparison.Ordinal);
    }

    // 10 000 cd at 50 m going 10 m/s: a twelfth of a paper's first tone (reference sheet, 9.4). One that stands for two minutes gets some 300 lx s.
    [Theory]
    [InlineData("10m/s", "vanishes")]
    [InlineData("0m/s", "stays")]
    public async Task A_head_lamp_is_seen_only_where_it_stands(string speed, string verdict)
    {
        var json = (await PromptRun.OfAsync(
            "motion", "lamp", "--candela", "10000", "--distance", "50m", "--speed", speed, "--meter", "EV -2", "--time", "2min", "--light", "lamp",
            "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("grade-2.json"), "--json")).Json("motion");
        Assert.Equal(verdict, json["verdict"]!.GetValue<string>());
    }

    // Half an hour turns the sky by 7.52°. The moon's 0.06 lx for some 160 s make a line on a dark sky; a star's millionth of a lux makes none; the sun burns one.
    [Theory]
    [InlineData("moon", true)]
    [InlineData("star", false)]
    [InlineData("sun", true)]
    public async Task The_turning_sky_draws_what_is_bright_enough(string body, bool seen)
    {
        var json = (await PromptRun.OfAsync(
            "motion", "trail", "--of", body, "--meter", "EV -6", "--time", "30min", "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("grade-2.json"), "--json"))
            .Json("motion");
        Assert.Equal(7.52, json["arcDeg"]!.GetValue<double>(), 0.005);
        Assert.Equal(seen, json["verdict"]!.GetValue<string>() != "vanishes");
    }

    [Fact]
    public async Task What_is_no_body_of_the_sky_is_refused()
        => (await PromptRun.OfAsync("motion", "trail", "--of", "comet", "--meter", "EV -6", "--time", "1min", "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("grade-2.json")))
            .IsRefused("it should be moon, sun or star");

    [Theory]
    [InlineData("--speed", "15", "km/h")]
    [InlineData("--speed", "-1m/s", "less than nothing")]
    [InlineData("--speed", "NaNm/s", "speed")]
    [InlineData("--distance", "1cm", "distance")]
    [InlineData("--width", "0m", "width")]
    [InlineData("--ratio", "-2", "luminance")]
    [InlineData("--ratio", "dark", "--help")]
    public async Task What_cannot_be_is_refused(string option, string value, string containing)
    {
        var arguments = Cyclist.ToArray();
        arguments[Array.IndexOf(arguments, option) + 1] = value;
        (await RunAsync(arguments)).IsRefused(containing);
    }

    [Theory]
    [InlineData("--time", "0s", "exposure")]
    [InlineData("--number", "0", "number")]
    public async Task So_are_no_time_and_nobody(string option, string value, string containing) => (await RunAsync([.. Cyclist, option, value])).IsRefused(containing);

    private static Task<PromptRun> RunAsync(string[] arguments) => PromptRun.OfAsync(["motion", .. arguments, .. Ground]);
}
