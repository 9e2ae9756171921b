namespace Foramen.Cli.Tests.Verbs;

public class MeterVerbTests
{
    // ISO 2720: L = K·2^EV/100 at ISO 100, K = 12.5; EV 15 is 4096 cd/m². f/16 at 1/125 s is lg2(256·125) = EV 14.966.
    [Theory]
    [InlineData("EV 15", 4096)]
    [InlineData("f/16 1/125 s ISO 100", 4000)]
    [InlineData("3200 cd/m2", 3200)]
    public async Task A_reading_becomes_luminance(string reading, double candelas)
    {
        var json = (await PromptRun.OfAsync("meter", reading, "--json")).Json("meter");
        Assert.Equal(candelas, json["luminanceCdPerM2"]!.GetValue<double>(), candelas * 1e-6);
    }

    [Fact]
    public async Task Shade_is_worth_more_to_the_paper_than_the_meter_says()
    {
        var json = (await PromptRun.OfAsync("meter", "EV 12", "--light", "blue shade", "--json")).Json("meter");
        Assert.InRange(json["actinicStopsFromNoon"]!.GetValue<double>(), 0.8, 1.05);
    }

    [Theory]
    [InlineData("15", "EV 12.3")]
    [InlineData("EV 99", "between -30 and 40")]
    [InlineData("f/0 1/125 s ISO 100", "f-number")]
    [InlineData("f/16 1/0 s ISO 100", "time")]
    [InlineData("f/16 1/125 s ISO 0", "ISO")]
    public async Task What_is_not_a_reading_is_refused(string reading, string containing)
        => (await PromptRun.OfAsync("meter", reading)).IsRefused(containing);

    [Fact]
    public async Task An_unknown_light_is_refused_with_the_known_ones()
        => (await PromptRun.OfAsync("meter", "EV 12", "--light", "disco")).IsRefused("open shade");

    [Fact]
    public async Task An_unknown_option_is_refused()
        => (await PromptRun.OfAsync("meter", "EV 12", "--frobnicate")).IsRefused("--help");
}
