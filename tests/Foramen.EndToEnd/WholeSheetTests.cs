using Foramen.EndToEnd.Stage;
using Foramen.Journal.Bodies;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>A sheet's whole life on a phone with the network off after the first load. The page's clock is put forward instead of waiting.</summary>
public sealed class WholeSheetTests(FieldStage stage)
{
    private const int SecondsToFlash = 60;

    [Fact]
    public async Task A_whole_sheet_without_a_network_from_photograph_to_judgement()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        await page.Clock.InstallAsync();
        await page.OpenAsync("/");
        await page.WaitUntilOfflineReadyAsync();
        await context.SetOfflineAsync(true);

        await SetOutAsync(page);
        await FrameAsync(page);
        await MeterAsync(page);
        var seconds = await PlanAsync(page);
        await FlashAsync(page);
        await ExposeAsync(page, seconds);
        await ProcessAsync(page);
        await JudgeAsync(page);

        // On the Ledger with its picture, also after a start from nothing.
        for (var time = 0; time < 2; time++)
        {
            await page.OpenAsync("/ledger");
            var card = page.GetByRole(AriaRole.Link).Filter(new() { HasText = "The grain elevator" });
            await card.GetByText("Keeper", new() { Exact = true }).WaitForAsync();
            await card.Locator("img").DrawnAsync();
        }

        Assert.Empty(errors);
    }

    private static async Task SetOutAsync(IPage page)
    {
        await page.GetByLabel("Name of the outing").FillAsync("Canal basin");
        await page.PressAsync("Start an outing");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Canal basin" }).WaitForAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Bench" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Add a camera" }).ClickAsync();
        await page.Locator("#camera-name").FillAsync("Box A");
        await page.Locator("#camera-hole").FillAsync("0.35");
        await page.Locator("#camera-focal").FillAsync("63");
        await page.Locator("#camera-width").FillAsync("127");
        await page.Locator("#camera-height").FillAsync("102");
        await page.PressAsync("Save");
        await page.GetByRole(AriaRole.Link, new() { Name = "Add a paper" }).ClickAsync();
        await page.Locator("#paper-name").FillAsync("Positive");
        await page.GetByLabel("Direct positive").CheckAsync();
        await page.PressAsync("Save");

        await page.GetByRole(AriaRole.Link, new() { Name = "Sheet" }).ClickAsync();
        await page.PressAsync("New sheet");
        await page.Locator("#name").FillAsync("The grain elevator");
        await page.PressAsync("Load the sheet");
    }

    private static async Task FrameAsync(IPage page)
    {
        await page.AtStepAsync("Frame");
        await page.Locator("#photo-choose").SetInputFilesAsync(Path.Combine(Repository.Root, "demo", "canal-basin.jpg"));
        var overlay = page.Locator("#frame-overlay");
        await overlay.WaitForAsync();
        await page.GetByLabel("Upright").CheckAsync();

        // Ten degrees to the left, six up.
        for (var press = 0; press < 20; press++)
        {
            await overlay.PressAsync("ArrowLeft");
        }

        for (var press = 0; press < 12; press++)
        {
            await overlay.PressAsync("ArrowUp");
        }

        await page.GetByText("10° to the left, 6° up").WaitForAsync();
        await page.PressAsync("On to Meter");
    }

    private static async Task MeterAsync(IPage page)
    {
        await page.AtStepAsync("Meter");
        await page.Locator("#meter-scene img").DrawnAsync();

        // Places and luminances: demo/canal-basin.truth.json, which the photograph was rendered from.
        await TouchToneAsync(page, (0.3465, 0.275), "elevator in the sun", "textured highlight");
        await TouchToneAsync(page, (0.3585, 0.275), "edge of a silo", "open shadow");
        await TouchToneAsync(page, (0.56, 0.83), "towpath", "mid");
        var read = (await StoredJournal.AllAsync<ToneRead>(page)).ToDictionary(tone => tone.Body.Name, tone => tone.Body.LuminanceCandelasPerSquareMetre);
        Assert.InRange(read["elevator in the sun"], 9024.87 * 0.9, 9024.87 * 1.1);
        Assert.InRange(read["towpath"], 4166.78 * 0.9, 4166.78 * 1.1);
        await page.PressAsync("On to Plan");
    }

    private static async Task TouchToneAsync(IPage page, (double X, double Y) place, string name, string wanted)
    {
        await page.Locator("#meter-scene").TouchAtAsync(place.X, place.Y);
        await page.Locator("#tone-name").FillAsync(name);
        await page.Locator("#new-tone").GetByLabel(wanted, new() { Exact = true }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add this tone" }).ClickAsync();
        await page.Locator(".tones").GetByText(name, new() { Exact = true }).WaitForAsync();
    }

    private static async Task<double> PlanAsync(IPage page)
    {
        await page.AtStepAsync("Plan");
        await page.Locator("#plan-print").WaitForAsync();
        await page.Locator("#plan-time").FillAsync("6.9");
        await page.Locator("#plan-flash").FillAsync("0.5");
        await page.PressAsync("Keep this plan");
        await page.AtStepAsync("Flash");
        var (_, plan) = (await StoredJournal.AllAsync<PlanMade>(page))[^1];
        // The slider counts doublings of a second.
        Assert.Equal(Math.Pow(2, 6.9), plan.ExposureSeconds, 1e-3);
        Assert.InRange(plan.FlashSeconds, 0.1, SecondsToFlash);
        return plan.ExposureSeconds;
    }

    private static async Task FlashAsync(IPage page)
    {
        await page.PressAsync("Start the flash");
        await page.GetByText("Stay on the even surface").WaitForAsync();
        await page.Clock.FastForwardAsync(SecondsToFlash * 1000);
        await page.PressAsync("Cover the hole now");
        await page.GetByText("flash given").WaitForAsync();
        await page.PressAsync("On to Expose");
    }

    private static async Task ExposeAsync(IPage page, double planned)
    {
        await page.AtStepAsync("Expose");
        await page.PressAsync("Open the hole");
        await page.GetByText("left in this light").WaitForAsync();
        await page.Clock.FastForwardAsync(40_000);
        await SayAsync(page, "Cloud");
        await page.Clock.FastForwardAsync(60_000);
        await SayAsync(page, "Sun");

        // Two stops less light need 4^(1/p) the time (Schwarzschild: equal effect for equal I·t^p), p 0.9 where nobody has measured it.
        var opened = (await StoredJournal.AllAsync<HoleOpened>(page))[0].At;
        var said = await StoredJournal.AllAsync<LightChanged>(page);
        var (cloud, sun) = (said[0].At, said[1].At);
        var (shown, clock, _) = await page.NumeralsAsync();
        var inSun = (cloud - opened).TotalSeconds + clock - (sun.ToUnixTimeMilliseconds() / 1000.0);
        var left = planned - inSun - ((sun - cloud).TotalSeconds / Math.Pow(4, 1 / 0.9));
        Assert.InRange(shown - left, 0, 2);

        await page.Clock.FastForwardAsync((long)(1000 * (left + 2)));
        await page.PressAsync("Close the hole now");
        await page.PressAsync("On to Process");
    }

    private static async Task SayAsync(IPage page, string word)
    {
        var button = page.GetByRole(AriaRole.Group, new() { Name = "The light now" }).GetByRole(AriaRole.Button, new() { Name = word, Exact = true });
        await button.ClickAsync();
        await Assertions.Expect(button).ToHaveAttributeAsync("aria-pressed", "true");
    }

    private static async Task ProcessAsync(IPage page)
    {
        await page.AtStepAsync("Process");
        await page.PressAsync("Sheet is in the developer");
        foreach (var (bath, seconds, go) in new[]
                 {
                     ("Developer", 75, "Now in the stop bath"), ("Stop bath", 20, "Now in the fixer"), ("Fixer", 240, "Now in the wash"), ("Wash", 480, "Wash is over"),
                 })
        {
            await page.GetByRole(AriaRole.Heading, new() { Name = bath, Level = 2, Exact = true }).WaitForAsync();
            // Its step is too soon to end before, and the numerals count over after.
            Assert.InRange((await page.NumeralsAsync()).Shown, seconds - 10, seconds);
            await page.Clock.FastForwardAsync((seconds + 1) * 1000);
            await page.GetByText("over", new() { Exact = true }).WaitForAsync();
            await page.PressAsync(go);
        }

        await page.PressAsync("On to Judge");
    }

    private static async Task JudgeAsync(IPage page)
    {
        await page.AtStepAsync("Judge");
        await page.GetByRole(AriaRole.Button, new() { Name = "towpath: half a stop lighter than wanted" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Motion" }).ClickAsync();
        await page.GetByLabel("Note").FillAsync("A cyclist stopped to ask.");
        await page.GetByLabel("Keeper", new() { Exact = true }).CheckAsync();
        await page.PressAsync("Judge it so");
        await page.GetByText("Next time, in the same light").WaitForAsync();
    }
}
