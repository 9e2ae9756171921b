using Foramen.EndToEnd.Stage;
using Foramen.Journal.Bodies;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>
/// The browser is killed (SIGKILL, the whole process tree), mostly at once after the page has shown a touch as done, and started again on the same
/// profile. What runs must then stand where the wall clock says.
/// </summary>
public sealed class KillTests(FieldStage stage)
{
    private const double FlashSeconds = 90;
    private const double ExposureSeconds = 300;

    // Failure of a paper nobody has measured: Schwarzschild, equal effect for equal I·t^p.
    private const double Exponent = 0.9;

    [Fact]
    public async Task Twenty_kills_lose_nothing_and_all_stands_right_to_the_second()
    {
        await using var phone = new KilledPhone(stage);
        await phone.StartAsync("/ledger");
        await phone.TakeInAsync(new PlannedSheetFile()
            .With("Flashed", ExposureSeconds, FlashSeconds)
            .With("Exposed", ExposureSeconds).OpenSince(DateTimeOffset.UtcNow.AddSeconds(-30))
            .Write());

        await ExposeAsync(phone);
        await ProcessAsync(phone);
        await JudgeAsync(phone);
        await FlashAsync(phone);

        Assert.Empty(phone.Lost);
        Assert.Equal(20, phone.Kills);
    }

    // Kills 1 to 6: at about 40 s of the exposure, then at each word for the light and at the end.
    private static async Task ExposeAsync(KilledPhone phone)
    {
        await phone.KillAsync("Exposed");
        await phone.Page.AtStepAsync("Expose");
        await phone.Page.GetByText("What did the light do meanwhile?").WaitForAsync();
        await ExpectTallyAsync(phone.Page);
        foreach (var word in new[] { "Cloud", "Sun", "Covered", "Thin cloud" })
        {
            await phone.TouchAsync(() => Word(phone, word).ClickAsync(), Word(phone, word, said: true), EntryKind.LightChanged);
            await phone.KillAsync("Exposed");
            await Word(phone, word, said: true).WaitForAsync();
            if (word == "Covered")
            {
                Assert.Equal("– –", await phone.Page.GetByRole(AriaRole.Timer).TextContentAsync());
            }
            else
            {
                await ExpectTallyAsync(phone.Page);
            }
        }

        await phone.TouchAsync(() => phone.Page.PressAsync("Hole is closed"), phone.Page.GetByText("Closed", new() { Exact = true }), EntryKind.HoleClosed);
        await phone.KillAsync("Exposed");
        await phone.Page.GotoStepAsync("Expose");
        var opened = (await StoredJournal.AllAsync<HoleOpened>(phone.Page))[0].At;
        var closed = (await StoredJournal.AllAsync<HoleClosed>(phone.Page))[0].At;
        await phone.Page.GetByText("Closed", new() { Exact = true }).WaitForAsync();
        Assert.Equal(Math.Floor((closed - opened).TotalSeconds), (await phone.Page.NumeralsAsync()).Shown);
    }

    // Kills 7 to 15: going into each bath and standing in it, and at the end.
    private static async Task ProcessAsync(KilledPhone phone)
    {
        await phone.Page.GotoStepAsync("Process");
        foreach (var (touch, bath, kinds) in new[]
                 {
                     ("Sheet is in the developer", "Developer", new[] { EntryKind.BathStarted, EntryKind.BathStep }),
                     ("Now in the stop bath", "Stop bath", [EntryKind.BathStep]),
                     ("Now in the fixer", "Fixer", [EntryKind.BathStep]),
                     ("Now in the wash", "Wash", [EntryKind.BathStep]),
                 })
        {
            await phone.TouchAsync(() => phone.Page.PressAsync(touch), Bath(phone, bath), kinds);
            for (var kill = 0; kill < 2; kill++)
            {
                await phone.KillAsync("Exposed");
                await Bath(phone, bath).WaitForAsync();
                await ExpectBathAsync(phone.Page);
            }
        }

        await phone.TouchAsync(() => phone.Page.PressAsync("Wash is over"), phone.Page.GetByText("The sheet is through."), EntryKind.BathFinished);
        await phone.KillAsync("Exposed");
        await phone.Page.AtStepAsync("Judge");
    }

    // Kill 16.
    private static async Task JudgeAsync(KilledPhone phone)
    {
        await phone.Page.GetByLabel("Not a keeper", new() { Exact = true }).CheckAsync();
        await phone.TouchAsync(() => phone.Page.PressAsync("Judge it so"), phone.Page.GetByText("Next time, in the same light"), EntryKind.PrintJudged);
        await phone.KillAsync("Exposed", "/ledger");
        await phone.Page.GetByText("Not a keeper").WaitForAsync();
    }

    // Kills 17 to 20: at the start of the flash, within it, at its end, and at the opening of the hole.
    private static async Task FlashAsync(KilledPhone phone)
    {
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Sheet", Exact = true }).ClickAsync();
        await phone.Page.GetByRole(AriaRole.Link).Filter(new() { HasText = "Flashed" }).ClickAsync();
        await phone.Page.AtStepAsync("Flash");
        await phone.TouchAsync(() => phone.Page.PressAsync("Start the flash"), phone.Page.GetByText("Stay on the even surface"), EntryKind.FlashStarted);
        for (var kill = 0; kill < 2; kill++)
        {
            await phone.KillAsync("Flashed");
            await phone.Page.AtStepAsync("Flash");
            var (shown, clock) = await phone.Page.NextSecondAsync();
            var since = (await StoredJournal.AllAsync<FlashStarted>(phone.Page))[0].At;
            ExpectRightToTheSecond(shown, FlashSeconds - (clock - since).TotalSeconds);
        }

        await phone.TouchAsync(() => phone.Page.PressAsync("Hole is covered"), phone.Page.GetByText("flash given"), EntryKind.FlashFinished);
        await phone.KillAsync("Flashed");
        await phone.Page.GotoStepAsync("Flash");
        await phone.Page.GetByText("flash given").WaitForAsync();
        var (started, finished) = ((await StoredJournal.AllAsync<FlashStarted>(phone.Page))[0].At, (await StoredJournal.AllAsync<FlashFinished>(phone.Page))[0].At);
        Assert.Equal(Math.Round((finished - started).TotalSeconds), (await phone.Page.NumeralsAsync()).Shown);

        await phone.Page.PressAsync("On to Expose");
        await phone.TouchAsync(() => phone.Page.PressAsync("Open the hole"), phone.Page.GetByText("left in this light"), EntryKind.HoleOpened);
        await phone.KillAsync("Flashed");
        await phone.Page.AtStepAsync("Expose");
        var (left, now) = await phone.Page.NextSecondAsync();
        ExpectRightToTheSecond(left, ExposureSeconds - (now - (await StoredJournal.AllAsync<HoleOpened>(phone.Page))[^1].At).TotalSeconds);
    }

    private static ILocator Word(KilledPhone phone, string word, bool said = false) => phone.Page.GetByRole(AriaRole.Group, new() { Name = "The light now" })
        .GetByRole(AriaRole.Button, new() { Name = word, Exact = true, Pressed = said ? true : null });

    private static ILocator Bath(KilledPhone phone, string bath) => phone.Page.GetByRole(AriaRole.Heading, new() { Name = bath, Level = 2, Exact = true });

    // Progress is the sum of dt/T(I) with T = T0·(I0/I)^(1/p); the time left is what remains of it in the light of now.
    private static async Task ExpectTallyAsync(IPage page)
    {
        var (shown, clock) = await page.NextSecondAsync();
        var at = (await StoredJournal.AllAsync<HoleOpened>(page))[0].At;
        double left = 1, full = ExposureSeconds;
        foreach (var (instant, change) in await StoredJournal.AllAsync<LightChanged>(page))
        {
            left -= (instant - at).TotalSeconds / full;
            at = instant;
            full = change.Light == LightWord.Covered ? double.PositiveInfinity : ExposureSeconds * Math.Pow(2, -change.LightStops / Exponent);
        }

        ExpectRightToTheSecond(shown, (left * full) - (clock - at).TotalSeconds);
    }

    private static async Task ExpectBathAsync(IPage page)
    {
        var (shown, clock) = await page.NextSecondAsync();
        var (since, step) = (await StoredJournal.AllAsync<BathStep>(page))[^1];
        ExpectRightToTheSecond(shown, step.PlannedSeconds - (clock - since).TotalSeconds);
    }

    // Whole seconds are rounded up.
    private static void ExpectRightToTheSecond(double shown, double left) => Assert.InRange(shown - left, -0.01, 1);
}
