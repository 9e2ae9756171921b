using System.Text.Json.Nodes;

namespace Foramen.Cli.Tests.Verbs;

public class ExposeVerbTests
{
    private static readonly string[] Tones =
    [
        "--tone", "elevator: textured highlight at 34%,30%",
        "--tone", "towpath: mid at 50%,80% to 58%,86%",
        "--tone", "sky: may burn at 65%,13%",
        "--tone", "pump house: may block at 72%,43%",
    ];

    [Theory]
    [InlineData("positive.json")]
    [InlineData("grade-2.json")]
    [Source("common-practice")]
    public async Task The_demo_photograph_gives_time_flash_odds_and_tones(string paper)
    {
        var json = await ExposeAsync([.. Tones, "--two-sheets"], paper);

        // Full sun, f/180, EI about 3: one to three minutes (common practice, no source); the grade-2 paper is about a stop faster.
        Assert.InRange((double)json["exposureSeconds"]!, 20, 200);
        Assert.InRange((double)json["flashSeconds"]!, 0, 20);
        Assert.InRange((double)json["odds"]!, 0.05, 0.95);
        Assert.Equal(4, json["tones"]!.AsArray().Count);
        Assert.True((double)json["bracket"]!["oddsOfOne"]! >= (double)json["odds"]! - 0.02);
        Assert.Equal("blocked", (string)Tone(json, "pump house")["outcome"]!);
        Assert.True((double)Tone(json, "sky")["colourStops"]! > 0.5, "the paper sees a blue sky brighter than the meter does");
    }

    [Fact]
    public async Task The_colour_of_the_light_moves_the_time_by_what_the_paper_sees()
    {
        var noon = await ExposeAsync([.. Tones, "--light", "noon", "--no-flash"]);
        var low = await ExposeAsync([.. Tones, "--light", "low sun", "--no-flash"]);

        // About 1.07 stops less for blue-sensitive paper in 3200 K light, and p = 0.9 makes that 2^(1.07/0.9) in time.
        Assert.Equal(Math.Pow(2, 1.07 / 0.9), (double)low["exposureSeconds"]! / (double)noon["exposureSeconds"]!, 0.12);
        Assert.Equal(0, (double)noon["flashSeconds"]!);
    }

    [Fact]
    public async Task A_reading_by_hand_anchors_the_photograph()
    {
        var own = await ExposeAsync(["--tone", "towpath: mid at 55%,83%", "--no-flash"]);
        var candelas = (double)Tone(own, "towpath")["luminanceCdPerM2"]!;
        var anchored = await ExposeAsync(
            ["--tone", "towpath: mid at 55%,83%", "--no-flash", "--anchor", FormattableString.Invariant($"55%,83% reads {candelas / 2:0.###} cd/m2")]);
        var metered = Math.Pow((double)own["exposureSeconds"]!, 0.9);
        Assert.Equal(Math.Pow(2 * metered, 1 / 0.9), (double)anchored["exposureSeconds"]!, (double)anchored["exposureSeconds"]! * 0.01);
    }

    [Fact]
    public async Task Without_tones_it_chooses_three_and_says_so()
    {
        var json = await ExposeAsync([]);
        Assert.Equal(3, json["tones"]!.AsArray().Count);
        Assert.Contains(json["assumptions"]!.AsArray(), note => ((string)note!).Contains("--tone", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Words_for_people()
    {
        var run = await PromptRun.OfAsync([.. Base("positive.json"), .. Tones]);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Open the hole for", run.Output, StringComparison.Ordinal);
        Assert.Contains("Odds of a keeper", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("not clear", "--tone", "sky")]
    [InlineData("outside", "--tone", "sky: mid at 145%,10%")]
    [InlineData("may burn or block", "--tone", "sky: may burn at 65%,13%")]
    [InlineData("level or upright", "--format", "sideways")]
    [InlineData("without a unit", "--tilt", "10")]
    [InlineData("anchor", "--anchor", "EV 12")]
    public async Task Bad_scenes_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync([.. Base("positive.json"), .. arguments])).IsRefused(containing);

    [Fact]
    public async Task A_photograph_that_is_none_is_refused()
        => (await PromptRun.OfAsync("expose", PromptRun.Kit("box-a.json"), "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("positive.json")))
            .IsRefused("not a photograph");

    [Fact]
    public async Task A_camera_file_for_a_paper_is_refused()
        => (await PromptRun.OfAsync("expose", PromptRun.Demo, "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("box-a.json")))
            .IsRefused("paper file");

    private static string[] Base(string paper) => ["expose", PromptRun.Demo, "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit(paper)];

    private static async Task<JsonNode> ExposeAsync(string[] arguments, string paper = "positive.json")
        => (await PromptRun.OfAsync([.. Base(paper), "--json", .. arguments])).Json("expose");

    private static JsonNode Tone(JsonNode report, string name) => report["tones"]!.AsArray().Single(tone => (string)tone!["name"]! == name)!;
}
