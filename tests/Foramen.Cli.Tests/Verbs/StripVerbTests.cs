using System.Globalization;
using System.Text.Json.Nodes;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Tests.Verbs;

/// <summary>
/// Strips of a curve with round parameters: direct-positive, Dmin 0.08, Dn 1.90, k 7, x0 0.60, so that by the formulas of ISO 6846 mirrored R' is 86.2 and the
/// steepest slope 3.325; in lamp light, p as stated.
/// </summary>
public sealed class StripVerbTests : IDisposable
{
    private static readonly LogisticCurve Curve = LogisticCurve.Create(
        PaperKind.DirectPositive, Density.FromValue(0.08), Density.FromValue(1.98), 7, 0.6);

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-strip-");

    public void Dispose() => directory.Delete(recursive: true);

    // 30·2^(i/2): 30, 42.4, 60, 84.9, 120, 169.7, worked by hand.
    [Fact]
    public async Task A_plan_of_half_stops()
    {
        var json = (await PromptRun.OfAsync("strip", "plan", "--first", "30s", "--count", "6", "--way", "cover", "--json")).Json("strip-plan");
        Assert.Equal([30, 42.4, 60, 84.9, 120, 169.7], json["seconds"]!.AsArray().Select(one => Math.Round((double)one!, 1)));
        Assert.Equal("cover patch 1", (string)json["moves"]![0]!["then"]!);
        Assert.Equal("end the light", (string)json["moves"]![5]!["then"]!);
    }

    [Fact]
    public async Task A_strip_that_was_read_gives_the_curve_it_was_made_with()
    {
        var strip = await ReadAsync("strip.json", 0.2, 4, 11, 0.9);
        var saved = Path.Combine(directory.FullName, "box.json");
        var json = (await PromptRun.OfAsync("strip", "fit", strip, "--paper", PromptRun.Kit("positive.json"), "--save", saved, "--json")).Json("strip-fit");
        Assert.Null(json["isoSpeed"]);
        Assert.Equal(86.2, (double)json["isoRange"]!["value"]!, 3.0);
        Assert.Equal(3.325, (double)json["steepestSlope"]!["value"]!, 0.12);
        Assert.True((bool)json["failure"]!["assumed"]!);
        Assert.Equal(12, json["patches"]!.AsArray().Count);

        // The box saved says the same of itself.
        var box = (await PromptRun.OfAsync("paper", saved, "--json")).Json("paper");
        Assert.Equal((double)json["isoRange"]!["value"]!, (double)box["isoRange"]!, 0.1);
    }

    // p = 0.85 in lights 16 times apart.
    [Fact]
    public async Task Two_lights_give_the_failure()
    {
        var bright = await ReadAsync("bright.json", 1.6, 2, 9, 0.85);
        var dim = await ReadAsync("dim.json", 0.1, 2 * Math.Pow(16, 1 / 0.85), 9, 0.85);
        var json = (await PromptRun.OfAsync("strip", "failure", bright, dim, "--paper", PromptRun.Kit("positive.json"), "--json")).Json("strip-failure");
        Assert.False((bool)json["assumed"]!);
        Assert.Equal(0.85, (double)json["exponent"]!, 0.02);
    }

    [Fact]
    public async Task One_light_is_refused_with_the_strip_to_make()
        => (await PromptRun.OfAsync("strip", "failure", await ReadAsync("strip.json", 0.2, 4, 11, 0.9), "--paper", PromptRun.Kit("positive.json")))
            .IsRefused("Make next a strip of");

    [Fact]
    public async Task A_flash_belongs_to_its_light()
    {
        async Task<JsonNode> FlashAsync(string reading) => (await PromptRun.OfAsync(
            "strip", "flash", "--paper", PromptRun.Kit("positive.json"), "--times", "2s 2.8s 4s 5.7s 8s", "--first-visible", "4",
            "--meter", "EV 15", "--camera", PromptRun.Kit("box-a.json"), "--for-meter", reading, "--json")).Json("strip-flash");
        var (sun, shade) = (await FlashAsync("EV 15"), await FlashAsync("EV 12"));
        Assert.Equal(Math.Sqrt(4 * 5.7), (double)sun["thresholdSeconds"]!, 1e-6);

        // Three stops less light, p = 0.90: 8^(1/0.9) times as long.
        Assert.Equal(Math.Pow(8, 1 / 0.9), (double)shade["advisedSeconds"]! / (double)sun["advisedSeconds"]!, 0.02);
    }

    // What was drawn: 0.09 + 1.81/(1 + (t/55 s)^2.1), under uneven light, flare and dust; the documented command.
    [Fact]
    public async Task The_demo_scan_gives_the_densities_it_was_drawn_with()
    {
        var path = Path.Combine(directory.FullName, "scanned.json");
        Assert.Equal(0, (await PromptRun.OfAsync([.. DemoScan, "--corners", "110,60 580,72 576,222 106,210", "--save", path])).ExitCode);
        var densities = JsonNode.Parse(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken))!["densities"]!.AsArray().Select(density => (double)density!).ToList();
        Assert.Equal(8, densities.Count);
        for (var i = 0; i < densities.Count; i++)
        {
            var drawn = 0.09 + (1.81 / (1 + Math.Pow(8 * Math.Pow(2, i) / 55, 2.1)));
            Assert.Equal(drawn, densities[i], 0.02 + (0.03 * drawn));
        }
    }

    [Theory]
    [InlineData("upside down or mirrored", "576,222 106,210 110,60 580,72")]
    [InlineData("mirrored", "580,72 110,60 106,210 576,222")]
    [InlineData("border", "110,60 900,72 896,222 106,210")]
    public async Task A_scan_the_wrong_way_round_is_refused(string containing, string corners)
    {
        var path = Path.Combine(directory.FullName, "scanned.json");
        (await PromptRun.OfAsync([.. DemoScan, "--corners", corners, "--save", path])).IsRefused(containing);
        Assert.False(File.Exists(path));
    }

    [Theory]
    [InlineData("without a unit", "plan", "--first", "8")]
    [InlineData("by hand", "plan", "--first", "2s", "--step", "0.33")]
    [InlineData("hole, cover or uncover", "plan", "--first", "8s", "--way", "sideways")]
    [InlineData("in lux", "read", "--lux", "bright", "--times", "1s 2s", "--densities", "1 2", "--save", "x.json")]
    [InlineData("either in lux", "read", "--times", "1s 2s", "--densities", "1 2", "--save", "x.json")]
    [InlineData("3 densities for 2 patches", "read", "--lux", "1lx", "--times", "1s 2s", "--densities", "1 2 3", "--save", "x.json")]
    [InlineData("no more light than patch 1", "read", "--lux", "1lx", "--times", "2s 1s", "--densities", "1 2", "--save", "x.json")]
    [InlineData("Nothing was read", "read", "--lux", "1lx", "--times", "1s 2s", "--save", "x.json")]
    [InlineData("density", "read", "--lux", "1lx", "--times", "1s 2s", "--densities", "1 NaN", "--save", "x.json")]
    [InlineData("5=0.75", "read", "--lux", "1lx", "--times", "1s 2s", "--match", "5", "--save", "x.json")]
    [InlineData("corner marks", "read", "--lux", "1lx", "--times", "1s 2s 4s", "--scan", "nowhere.png", "--save", "x.json")]
    [InlineData("nowhere.png", "read", "--lux", "1lx", "--times", "1s 2s 4s", "--scan", "nowhere.png", "--corners", "1,1 9,1 9,9 1,9", "--known", "0,0,1,1=0.1", "--save", "x.json")]
    [InlineData("no strip file", "fit", "nowhere.json", "--paper", "nowhere.json")]
    [InlineData("at least one strip", "fit")]
    public async Task Bad_input_is_refused(string containing, params string[] arguments)
    {
        (await PromptRun.OfAsync(["strip", .. arguments])).IsRefused(containing);
        Assert.False(File.Exists("x.json"));
    }

    private static string[] DemoScan =>
    [
        "strip", "read", "--meter", "EV 13", "--camera", PromptRun.Kit("box-a.json"), "--times", "8s 16s 32s 64s 128s 256s 512s 1024s", "--paper-kind", "directPositive",
        "--scan", Path.Combine(AppContext.BaseDirectory, "demo", "strip.jpg"), "--known", "0.2,0,1,0.14=0.09; -0.13,0.3,-0.04,0.9=1.90", "--white-edge", "0.143",
    ];

    private async Task<string> ReadAsync(string name, double lux, double first, int count, double exponent)
    {
        var actinic = Actinic.Factor(LightColour.Lamp.ToSpectrum(), PaperSensitivity.BlueSensitive);
        var times = Enumerable.Range(0, count).Select(i => first * Math.Pow(2, 0.5 * i)).ToList();
        var densities = times.Select(seconds => Curve.DensityAtLg(Math.Log10(lux * actinic) + (exponent * Math.Log10(seconds))));
        var path = Path.Combine(directory.FullName, name);
        var run = await PromptRun.OfAsync(
            "strip", "read", "--lux", Text(lux) + "lx", "--light", "lamp", "--light-sd", "0.05", "--times", string.Join(' ', times.Select(one => Text(one) + "s")),
            "--densities", string.Join(' ', densities.Select(Text)), "--masked", "1.98", "--by", "densitometer", "--save", path);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        return path;
    }

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
