using Bunit;
using Foramen.Field.Bench.Strips;
using Foramen.Field.Bench.Strips.Flashes;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Bench.Strips.Flashes;

public sealed class FlashStripPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_flash_strip_is_planned_and_found_again_beside_the_box()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var plan = field.Render<StripPlanPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        await plan.Find("#strip-purpose-1").ChangeAsync(new() { Value = "on" });
        plan.Find("#strip-reading").Input("EV 15");
        await plan.Find("form").SubmitAsync();
        var strip = Assert.Single(field.Session.Ledger.Strips.All);
        Assert.Equal(StripPurpose.Flash, strip.Made!.Body.Purpose);
        var strips = field.Render<StripsPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.NotEmpty(strips.FindAll($"a[href='bench/flash/{strip.Id}']"));
        Assert.Empty(strips.FindAll($"a[href='bench/strip/{strip.Id}']"));
    }

    // Between 4 s and 5.7 s: √(4·5.7) = 4.8 s.
    [Fact]
    public async Task The_threshold_lies_between_two_patches_and_is_kept()
    {
        var (strip, page) = await OpenAsync();
        page.Find("#flash-first").Input("4");
        Assert.Contains("4.8 s", page.Find("[aria-live]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("path.advised"));
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(4, field.Session.Ledger.Strips.Find(strip)!.Read!.Body.FirstTone);
    }

    // Three stops less light at p = 0.90: 8^(1/0.9) = 10.08 times as long.
    [Fact]
    public async Task The_flash_to_give_belongs_to_its_light()
    {
        var (strip, _) = await OpenAsync();
        double Advised(string target)
        {
            var state = new FlashStripState(field.Session, strip);
            state.SayFirstTone("4");
            state.SayTarget(target);
            Assert.Empty(state.Messages);
            return state.Advice!.Time.Seconds;
        }

        Assert.Equal(Math.Pow(8, 1 / 0.9), Advised("EV 10") / Advised("EV 13"), 0.02);
    }

    [Theory]
    [InlineData("1", "the shortest flash")]
    [InlineData("6", "the longest flash")]
    [InlineData("many", "should be a number")]
    public async Task What_the_strip_cannot_say_is_said_beside_the_field_and_stays(string first, string containing)
    {
        var (strip, page) = await OpenAsync();
        page.Find("#flash-first").Input(first);
        var input = page.Find("#flash-first");
        Assert.Equal(("true", first), (input.GetAttribute("aria-invalid"), input.GetAttribute("value")));
        Assert.Contains(containing, page.Markup, StringComparison.Ordinal);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Null(field.Session.Ledger.Strips.Find(strip)!.Read);
    }

    [Fact]
    public async Task A_reading_that_is_none_is_said_and_an_empty_patch_too()
    {
        var (_, page) = await OpenAsync();
        page.Find("#flash-target").Input("bright");
        Assert.Equal("true", page.Find("#flash-target").GetAttribute("aria-invalid"));
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Contains("first that shows", page.Find("#flash-first-message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strip_that_is_not_there_is_said()
        => Assert.Contains("no such strip", field.Render<FlashStripPage>(p => p.Add(page => page.IdText, "nothing")).Markup, StringComparison.Ordinal);

    private async Task<(Ulid Strip, IRenderedComponent<FlashStripPage> Page)> OpenAsync()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var strip = field.Session.NewId();
        await field.Session.AppendAsync(
            new StripMade { Strip = strip, Paper = box.Id, Purpose = StripPurpose.Flash, OnStripLux = 0.1, LightKelvin = 5503, Seconds = [2, 2.8, 4, 5.7, 8] });
        return (strip, field.Render<FlashStripPage>(p => p.Add(page => page.IdText, strip.ToString())));
    }
}
