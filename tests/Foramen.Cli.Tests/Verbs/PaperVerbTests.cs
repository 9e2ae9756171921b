namespace Foramen.Cli.Tests.Verbs;

public class PaperVerbTests
{
    [Fact]
    public async Task The_demo_paper_has_its_index_where_it_was_found()
    {
        var json = (await PromptRun.OfAsync("paper", PromptRun.Kit("positive.json"), "--json")).Json("paper");
        var index = json["exposureIndices"]!.AsArray().Single(entry => (string)entry!["light"]! == "noon" && (double)entry["seconds"]! == 120);
        Assert.Equal(3, (double)index!["exposureIndex"]!, 0.03);
        Assert.Null(json["isoSpeed"]);
    }

    [Fact]
    public async Task Iso_speed_is_converted_not_copied()
    {
        // (π/4)·12.5·250/1000 = 2.454 in lamp light at a second; daylight is worth about 2.4 times that (CIE daylight against V(λ)).
        var json = (await PromptRun.OfAsync("paper", PromptRun.Kit("grade-2.json"), "--json")).Json("paper");
        var indices = json["exposureIndices"]!.AsArray();
        Assert.Equal(2.454, (double)indices.Single(e => (string)e!["light"]! == "lamp" && (double)e["seconds"]! == 1)!["exposureIndex"]!, 0.01);
        Assert.InRange((double)indices.Single(e => (string)e!["light"]! == "noon" && (double)e["seconds"]! == 1)!["exposureIndex"]!, 5.5, 6.3);
        Assert.Equal(250, (double)json["isoSpeed"]!, 0.1);
    }

    [Fact]
    public async Task A_paper_can_be_saved_and_read_back()
    {
        var directory = Directory.CreateTempSubdirectory("foramen-paper-");
        try
        {
            var file = Path.Combine(directory.FullName, "box.json");
            var saved = await PromptRun.OfAsync("paper", "--name", "box", "--kind", "directPositive", "--ei", "2.5", "--ei-at", "2 min", "--save", file, "--json");
            var read = await PromptRun.OfAsync("paper", file, "--json");
            Assert.Equal(saved.Output, read.Output);
            Assert.Single(directory.GetFiles());
        }
        finally
        {
            directory.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("time it was found at", "--kind", "directPositive", "--ei", "3")]
    [InlineData("without a unit", "--kind", "directPositive", "--ei", "3", "--ei-at", "120")]
    [InlineData("direct-positive", "--kind", "directPositive", "--iso-speed", "200")]
    [InlineData("negative or", "--ei", "3", "--ei-at", "120s")]
    [InlineData("failure exponent", "--kind", "negative", "--iso-speed", "200", "--failure-p", "1.5")]
    [InlineData("ISO range", "--kind", "negative", "--iso-speed", "200", "--iso-range", "5")]
    [InlineData("no paper file", "nowhere.json")]
    public async Task Bad_papers_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["paper", .. arguments])).IsRefused(containing);

    [Fact]
    public async Task A_damaged_file_is_refused_with_its_line()
    {
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, "{\n \"name\": \"x\",\n \"kind\": 7 }", TestContext.Current.CancellationToken);
            (await PromptRun.OfAsync("paper", file)).IsRefused("line 3");
        }
        finally
        {
            File.Delete(file);
        }
    }
}
