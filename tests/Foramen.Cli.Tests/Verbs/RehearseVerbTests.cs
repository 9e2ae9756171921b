using System.Text.Json;
using System.Text.Json.Nodes;
using Foramen.Rehearsal;
using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Outside;
using Foramen.Rehearsal.Photographers;
using Foramen.Rehearsal.Runs;
using Foramen.Rehearsal.Worlds;
using Json.Schema;

namespace Foramen.Cli.Tests.Verbs;

public class RehearseVerbTests
{
    [Fact]
    public async Task Advice_beats_the_rule_of_thumb_and_stays_below_the_oracle()
    {
        var json = (await PromptRun.OfAsync("rehearse", "--seed", "11", "--worlds", "24", "--sheets", "14", "--json")).Json("rehearse");
        var keepers = json["policies"]!.AsArray().ToDictionary(policy => (string)policy!["policy"]!, policy => (double)policy!["keepers"]!);
        Assert.True(keepers["foramen"] > keepers["rule-of-thumb"] + 0.05, json.ToJsonString());
        Assert.True(keepers["oracle"] > keepers["foramen"], json.ToJsonString());
        Assert.True((double)json["gapClosed"]! > 0.3);
    }

    [Theory]
    [InlineData("usual")]
    [InlineData("held-out")]
    public async Task The_same_seed_gives_the_same_outings(string family)
    {
        string[] arguments = ["rehearse", "--seed", "5", "--worlds", "3", "--sheets", "8", "--family", family, "--policy", "foramen", "--json"];
        Assert.Equal((await PromptRun.OfAsync(arguments)).Output, (await PromptRun.OfAsync(arguments)).Output);
        arguments[2] = "6";
        Assert.NotEqual((await PromptRun.OfAsync([.. arguments[..2], "5", .. arguments[3..]])).Output, (await PromptRun.OfAsync(arguments)).Output);
    }

    [Fact]
    public async Task The_insider_is_played_when_asked_for_and_the_same_each_time()
    {
        string[] arguments = ["rehearse", "--seed", "11", "--worlds", "1", "--sheets", "6", "--with-insider", "--json"];
        var json = (await PromptRun.OfAsync(arguments)).Json("rehearse");
        Assert.Equal(["rule-of-thumb", "foramen", "oracle", "insider"], json["policies"]!.AsArray().Select(policy => (string)policy!["policy"]!));
        Assert.Equal(json.ToJsonString(), (await PromptRun.OfAsync(arguments)).Json("rehearse").ToJsonString());
    }

    // What is played over lines is what is played inside: a world of ours spoken to by our own photographer, both through text.
    [Fact]
    public void Lines_carry_all_that_a_photographer_needs()
    {
        var inside = RehearsalRun.Play(Policy.Foramen, WorldFamily.Usual, 9, 1, 6, cancellation: TestContext.Current.CancellationToken);
        var said = new StringWriter();
        var world = WorldMaker.Make(9, 1, WorldFamily.Usual);
        var scripted = new StringWriter();
        var channel = new LineChannel(new StringReader(""), scripted);
        var replies = new List<RehearsalLine>();
        foreach (var sheet in RehearsalRun.Play(new Recording(world, replies), new ForamenPhotographer(), 6))
        {
            Assert.Equal(inside[sheet.Number - 1], sheet);
        }

        foreach (var reply in replies)
        {
            channel.Say(reply);
        }

        var played = RehearsalRun.PlayOutside(new LineChannel(new StringReader(scripted.ToString()), said), Policy.Foramen, null, 9, 1, 6, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(inside, played);
        AssertLines(scripted.ToString());
        AssertLines(said.ToString());
    }

    [Theory]
    [InlineData("", "ended")]
    [InlineData("hello", "cannot be read")]
    [InlineData("{\"type\":\"judged\",\"keeper\":true,\"tones\":[]}", "type expose")]
    [InlineData("{\"type\":\"expose\",\"seconds\":-3}", "exposure time")]
    [InlineData("{\"type\":\"expose\",\"seconds\":30,\"odds\":1.5}", "odds")]
    public void A_photographer_outside_who_says_nonsense_is_refused(string line, string containing)
    {
        var refusal = Assert.Throws<Foramen.Engine.Quantities.RefusalException>(() => RehearsalRun.PlayOutside(
            new LineChannel(new StringReader(line), TextWriter.Null), null, WorldFamily.Usual, 1, 1, 1, cancellation: TestContext.Current.CancellationToken));
        Assert.Contains(containing, refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refusal.Message);
    }

    [Theory]
    [InlineData("policy", "--policy", "luck")]
    [InlineData("worlds", "--worlds", "0")]
    [InlineData("sheets", "--sheets", "500")]
    [InlineData("family", "--family", "best")]
    [InlineData("stdio", "--world", "tcp")]
    [InlineData("leave one out", "--photographer", "stdio", "--policy", "oracle")]
    [InlineData("one policy", "--world", "stdio")]
    [InlineData("--with-insider goes with all", "--with-insider", "--policy", "foramen")]
    [InlineData("how worlds outside are made", "--world", "stdio", "--policy", "insider")]
    public async Task Bad_rehearsals_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["rehearse", .. arguments])).IsRefused(containing);

    private static void AssertLines(string text)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "schemas", "rehearsal-line.schema.json")));
        foreach (var line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Assert.True(schema.Evaluate(JsonSerializer.SerializeToElement(JsonNode.Parse(line))).IsValid, line);
        }
    }

    private sealed class Recording(IWorld world, List<RehearsalLine> said) : IWorld
    {
        public SheetLine Next()
        {
            var sheet = world.Next();
            said.Add(sheet);
            return sheet;
        }

        public JudgedLine Expose(ExposeLine done)
        {
            var judged = world.Expose(done);
            said.Add(judged);
            return judged;
        }
    }
}
