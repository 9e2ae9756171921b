namespace Foramen.Cli.Tests.Verbs;

public class LearnVerbTests
{
    private static string Journal => Path.Combine(AppContext.BaseDirectory, "demo", "canal-basin.foramen.jsonl");

    // The demo outing: four judged sheets, two of them keepers; on the first the elevator came out a quarter of a stop light.
    [Fact]
    public async Task The_demo_outing_teaches()
    {
        var json = (await PromptRun.OfAsync("learn", "--journal", Journal, "--json")).Json("learn");
        var evidence = json["evidence"]!.AsArray();
        Assert.Equal((int)json["judged"]!, evidence.Count + json["leftOut"]!.AsArray().Count);
        Assert.NotEmpty(evidence);
        var elevator = evidence.Single(one => (string)one!["sheet"]! == "The grain elevator")!;
        Assert.Equal(0.125, (double)elevator["seenStops"]!, 1e-9);

        // Its plan foretold +0.16 and −0.09 stops; the tally ran as planned.
        Assert.InRange((double)elevator["foretoldStops"]!, -0.3, 0.3);
        Assert.All(json["beliefs"]!.AsArray(), belief => Assert.True((double)belief!["spread"]! <= (double)belief["priorSpread"]! + 1e-9));
        Assert.False((bool)json["odds"]!["isTelling"]!);
    }

    [Fact]
    public async Task Words_for_people()
    {
        var run = await PromptRun.OfAsync("learn", "--journal", Journal);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("The grain elevator", run.Output, StringComparison.Ordinal);
        Assert.Contains("too few to tell", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_journal_is_refused()
    {
        (await PromptRun.OfAsync("learn", "--journal", "nowhere.jsonl")).IsRefused("no journal");
        (await PromptRun.OfAsync("learn", "--journal", PromptRun.Kit("box-a.json"))).IsRefused("journal");
    }
}
