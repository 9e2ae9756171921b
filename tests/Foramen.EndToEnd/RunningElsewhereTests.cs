using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>Whoever leaves the page of an open hole hears its end, and sees it on every page.</summary>
public sealed class RunningElsewhereTests(FieldStage stage)
{
    // What the sound is asked to play, seconds from then; and what is taken back.
    private const string Listen =
        """
        window.heard = [];
        const start = OscillatorNode.prototype.start;
        OscillatorNode.prototype.start = function (at) { window.heard.push(at - this.context.currentTime); return start.call(this, at); };
        const stop = OscillatorNode.prototype.stop;
        OscillatorNode.prototype.stop = function (at) { if (at === undefined) { window.heard = []; } return stop.call(this, at); };
        """;

    [Fact]
    public async Task The_signal_stays_planned_and_what_runs_is_on_every_page()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        await page.AddInitScriptAsync(Listen);
        await page.OpenAsync("/ledger");
        await page.Locator("#import").SetInputFilesAsync(
            new FilePayload { Name = "plan.jsonl", MimeType = "application/jsonl", Buffer = new PlannedSheetFile().With("Grain elevator", exposureSeconds: 12).Write() });
        await page.Locator(".sheet-card").First.ClickAsync();
        await page.AtStepAsync("Expose");
        await page.PressAsync("Open the hole");
        await page.GetByText("left in this light").WaitForAsync();
        var planned = await page.EvaluateAsync<double[]>("() => window.heard");
        Assert.NotEmpty(planned);
        Assert.InRange(planned[0], 8, 12.1);

        await page.WanderAsync("/bench");
        await page.Locator("#running").GetByText("Grain elevator · Expose").WaitForAsync();
        Assert.Equal(planned, await page.EvaluateAsync<double[]>("() => window.heard"));
        await page.Locator("#running .over").WaitForAsync();
        foreach (var theme in new[] { "paper", "night", "red" })
        {
            await page.ThemeAsync(theme);
            Assert.Empty(await Axe.FindAsync(page, $"bench, {theme}"));
        }

        await page.Locator("#running a").ClickAsync();
        await page.PressAsync("Close the hole now");
        await page.WanderAsync("/bench");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Cameras" }).WaitForAsync();
        Assert.Equal(0, await page.Locator("#running").CountAsync());
    }
}
