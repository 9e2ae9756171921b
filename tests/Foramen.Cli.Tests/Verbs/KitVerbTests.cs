using System.Text.Json.Nodes;

namespace Foramen.Cli.Tests.Verbs;

public class KitVerbTests
{
    // By hand: 10 sheets and 10/5 + 1 = 3 spares; one 300 ml filling of developer and 13 top-ups of 30 ml are 690 ml at 1 + 9: 69 ml of concentrate (C1·V1 = C2·V2).
    [Fact]
    public async Task A_day_of_ten_sheets()
    {
        var json = await KitAsync("--sheets", "10", "--size", "102x127mm");
        Assert.Equal((13, 3), ((int)json["paper"]!, (int)json["spares"]!));
        var developer = Liquid(json, "developer");
        Assert.Equal((690.0, 69.0, 621.0), ((double)developer["workingMl"]!, (double)developer["concentrateMl"]!, Math.Round((double)developer["waterMl"]!, 9)));
        Assert.Equal(390, (double)json["topUpMl"]!, 1e-9);
        // All solutions and the first wash water of each sheet go home: 690 + 300 + 300 + 13·150.
        Assert.Equal(3240, (double)json["wasteMl"]!, 1e-9);
        Assert.Null(json["cost"]);
        Assert.Contains(json["packing"]!.AsArray(), line => ((string)line!).StartsWith("13 sheets", StringComparison.Ordinal));
    }

    // 13 sheets at 0.9, 69 ml at 24 a litre, 15 ml of stop at 10, 60 ml of fixer at 16: 11.70 + 1.656 + 0.15 + 0.96.
    [Fact]
    public async Task Cost_adds_up()
    {
        var json = await KitAsync("--sheets", "10", "--size", "102x127mm", "--price-sheet", "0.9", "--price-developer", "24", "--price-stop", "10", "--price-fixer", "16");
        Assert.Equal(14.466, (double)json["cost"]!, 1e-9);
    }

    // Weight by hand: all water, concentrates at 1.15 kg/l, paper at 0.25 kg/m².
    [Fact]
    public async Task Weight_adds_up()
    {
        var json = await KitAsync("--sheets", "10", "--size", "102x127mm");
        var expected = ((double)json["waterMl"]! / 1000) + ((double)json["concentratesMl"]! / 1000 * 1.15) + (13 * 0.102 * 0.127 * 0.25);
        Assert.Equal(expected, (double)json["kilograms"]!, 1e-9);
        Assert.Equal(144, (double)json["concentratesMl"]!, 1e-9);
    }

    [Fact]
    public async Task Five_people_share_one_bottle()
    {
        var json = await KitAsync("--sheets", "2", "--people", "5", "--size", "102x127mm", "--developer", "500ml");
        Assert.Equal(13, (int)json["paper"]!);
        // One sheet at a time: 13 of 75 s and a minute of handling.
        Assert.Equal(13 * 135, (double)json["developerBusySeconds"]!, 1e-9);
        Assert.Contains(json["remarks"]!.AsArray(), remark => ((string)remark!).Contains("One bottle develops one sheet at a time", StringComparison.Ordinal));
        // A tenth of the half litre after each of 13 sheets.
        Assert.Equal(650, (double)json["topUpMl"]!, 1e-9);
    }

    [Fact]
    public async Task A_rinse_instead_of_a_stop_bath_and_no_topping_up()
    {
        var json = await KitAsync("--sheets", "4", "--spares", "0", "--size", "4x5in", "--stop", "0ml", "--top-up", "0ml", "--wash-changes", "4", "--fibre");
        Assert.Equal(600, (double)Liquid(json, "rinse")["waterMl"]!, 1e-9);
        Assert.Equal(0, (double)json["topUpMl"]!);
        Assert.Equal(4 * 4 * 150, (double)Liquid(json, "wash")["waterMl"]!, 1e-9);
    }

    [Fact]
    public async Task In_words()
    {
        var run = await PromptRun.OfAsync("kit", "--sheets", "10", "--size", "102x127mm");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("[ ] 13 sheets of paper", run.Output, StringComparison.Ordinal);
        Assert.Contains("add acid to water", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("number of sheets", "--sheets", "0", "--size", "102x127mm")]
    [InlineData("without a unit", "--sheets", "4", "--size", "102x127")]
    [InlineData("needed to cover", "--sheets", "4", "--size", "102x127mm", "--developer", "100ml")]
    [InlineData("needed to cover", "--sheets", "4", "--size", "102x127mm", "--fixer", "100ml")]
    [InlineData("less than nothing", "--sheets", "4", "--size", "102x127mm", "--top-up", "-30ml")]
    [InlineData("between 0 and 300 ml", "--sheets", "4", "--size", "102x127mm", "--top-up", "400ml")]
    [InlineData("price", "--sheets", "4", "--size", "102x127mm", "--price-sheet", "-1")]
    [InlineData("people", "--sheets", "4", "--size", "102x127mm", "--people", "0")]
    [InlineData("sheets", "--size", "102x127mm")]
    public async Task Bad_wishes_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["kit", .. arguments])).IsRefused(containing);

    private static async Task<JsonNode> KitAsync(params string[] arguments) => (await PromptRun.OfAsync(["kit", "--json", .. arguments])).Json("kit");

    private static JsonNode Liquid(JsonNode json, string bath) => json["liquids"]!.AsArray().Single(liquid => (string)liquid!["bath"]! == bath)!;
}
