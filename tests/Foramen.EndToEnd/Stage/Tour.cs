using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>
/// A walk through every place and every step, with the demo outing loaded and the page's clock set to its evening; at each sight, with its name, the
/// visitor looks.
/// </summary>
internal sealed class Tour(IPage page, Func<string, Task> look)
{
    /// <summary>After the last entry of the demo outing, on the same day.</summary>
    public static readonly DateTime DemoEvening = new(2026, 5, 9, 16, 25, 0, DateTimeKind.Utc);

    /// <summary>The demo outing.</summary>
    public static string DemoJournal { get; } = Path.Combine(Repository.Root, "demo", "canal-basin.foramen.jsonl");

    public async Task WalkAsync()
    {
        await page.Clock.InstallAsync(new() { TimeDate = DemoEvening });
        await PlacesAsync();
        await FrameAsync();
        await MeterAsync();
        await PlanAsync();
        await FlashAsync();
        await ExposeAsync();
        await ProcessAsync();
        await JudgeAsync();
        await LedgerAsync();
    }

    private async Task PlacesAsync()
    {
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Second Saturday of May" }).WaitForAsync();
        await page.GetByRole(AriaRole.Link).Filter(new() { HasText = "The grain elevator" }).Locator("img").DrawnAsync();
        await look("outing");
        await LightAsync();
        foreach (var (link, name) in new[] { ("Bench", "bench"), ("Settings", "settings"), ("Sheet", "sheet") })
        {
            await page.GetByRole(AriaRole.Navigation, new() { Name = "Places" }).GetByRole(AriaRole.Link, new() { Name = link, Exact = true }).ClickAsync();
            await page.GetByRole(AriaRole.Heading, new() { Name = link, Level = 1 }).WaitForAsync();
            await look(name);
        }

        foreach (var (name, gear) in new[] { ("bench-camera", "Box A"), ("bench-paper", "direct-positive") })
        {
            await page.WanderAsync("/bench");
            await page.Locator("a.gear").Filter(new() { HasText = gear }).First.ClickAsync();
            await page.Locator("form").WaitForAsync();
            await look(name);
        }

        await StripAsync();
        await CameraBenchAsync();
        await page.WanderAsync("/sheet/new");
        await page.GetByLabel("Box A").CheckAsync();
        await page.GetByLabel("direct-positive").CheckAsync();
        await page.Locator("#name").FillAsync("The elevator, evening");
        await look("sheet-new");
        await page.PressAsync("Load the sheet");
    }

    // On from the box of paper: a strip is planned, made, read by eye and fitted.
    private async Task StripAsync()
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Test strips" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan a strip" }).ClickAsync();
        await page.GetByLabel("straight on it").CheckAsync();
        await page.Locator("#strip-lux").FillAsync("0.05");
        await page.Locator("#strip-first").FillAsync("16");
        await look("bench-strip-plan");
        await page.PressAsync("It is made");
        await page.Locator("#strip-first-tone").FillAsync("2");
        await page.Locator("#strip-last-tone").FillAsync("7");
        await page.Locator("#strip-match").FillAsync("5");
        await look("bench-strip-read");
        await page.PressAsync("Write it down");
        await page.Locator(".chart .band").WaitForAsync();
        await look("bench-strips");
        await page.GetByRole(AriaRole.Link, new() { Name = "8 patches, 16 s" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Read it on a scan or photograph" }).ClickAsync();
        await page.Locator("#strip-scan").SetInputFilesAsync(Path.Combine(Repository.Root, "demo", "scans", "strip.jpg"));
        await page.Locator("#strip-scan-scene img").DrawnAsync();
        foreach (var (x, y) in new[] { (110, 60), (580, 72), (576, 222), (106, 210), (340, 76), (70, 150) })
        {
            await page.Locator("#strip-scan-scene").TouchAtAsync(x / 660.0, y / 290.0);
        }

        await page.Locator("#strip-scan-densities").WaitForAsync();
        await look("bench-strip-scan");
        await page.PressAsync("Keep these densities");
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan a strip" }).ClickAsync();
        await page.GetByLabel("the flash", new() { Exact = true }).CheckAsync();
        await page.Locator("#strip-reading").FillAsync("EV 15");
        await page.PressAsync("It is made");
        await page.Locator("#flash-first").FillAsync("3");
        await page.Locator("circle.advised").WaitForAsync();
        await look("bench-flash-strip");
    }

    private async Task CameraBenchAsync()
    {
        async Task OpenAsync(string link)
        {
            await page.WanderAsync("/bench");
            await page.Locator("a.gear").Filter(new() { HasText = "Box A" }).First.ClickAsync();
            await page.GetByRole(AriaRole.Link, new() { Name = link }).ClickAsync();
        }

        await OpenAsync("Measure the hole on a scan");
        await page.Locator("#hole-scan").SetInputFilesAsync(Path.Combine(Repository.Root, "demo", "scans", "hole.png"));
        await page.Locator("#hole-dpi").FillAsync("4800");
        await page.PressAsync("Measure");
        await page.Locator("path.found").First.WaitForAsync();
        await look("bench-hole");
        await OpenAsync("Hole to paper by two marks");
        await page.Locator("#chamber-apart").FillAsync("1");
        await page.Locator("#chamber-away").FillAsync("2.5");
        await page.Locator("#chamber-seen").FillAsync("25.2");
        await page.Locator(".cell").First.WaitForAsync();
        await look("bench-chamber");
        await OpenAsync("Sighting marks for the box");
        await page.Locator(".template svg").WaitForAsync();
        await look("bench-marks");
        await OpenAsync("A mask");
        await page.Locator("#mask-text").FillAsync("CANAL 7");
        await page.Locator(".template svg").WaitForAsync();
        await look("bench-mask");
    }

    private async Task LightAsync()
    {
        await page.Locator("a.spot").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the whole year" }).ClickAsync();
        await page.Locator(".chart .fill").WaitForAsync();
        await look("outing-light");
        await page.WanderAsync("/outing/place");
        await page.Locator("#place-name").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add what hides the sun" }).ClickAsync();
        await page.Locator("#shade-0-left").WaitForAsync();
        await look("outing-place");
        await page.WanderAsync("/outing/day");
        await page.Locator("#plan-date").WaitForAsync();
        await page.PressAsync("Plan it");
        await page.Locator(".steps li").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What are the odds?" }).ClickAsync();
        await look("outing-day");
        await page.WanderAsync("/");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Second Saturday of May" }).WaitForAsync();
    }

    private async Task LedgerAsync()
    {
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Places" }).GetByRole(AriaRole.Link, new() { Name = "Ledger", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link).Filter(new() { HasText = "The elevator, evening" }).Locator("img").DrawnAsync();
        await page.Locator("#find-open").ClickAsync();
        await page.Locator("#find").FillAsync("elevator");
        await look("ledger");
        await page.Locator("#learned").ClickAsync();
        await page.Locator(".belief").First.WaitForAsync();
        await look("ledger-learned");
        await page.WanderAsync("/ledger/contact");
        await page.Locator(".contact img").First.DrawnAsync();
        await look("ledger-contact");
    }

    // What is looked at next stands at the top of the screen.
    private async Task TopAsync(string selector)
        => await page.Locator(selector).First.EvaluateAsync("e => { e.scrollIntoView({ block: 'start' }); scrollBy(0, -12); }");

    private async Task FrameAsync()
    {
        await page.AtStepAsync("Frame");
        await look("frame-before");
        await page.GetByLabel("By hand").CheckAsync();
        await page.Locator("#distance").FillAsync("85");
        await page.Locator("#height").FillAsync("42");
        await page.GetByText("Stand at least").WaitForAsync();
        await look("frame-by-hand");
        await page.GetByLabel("On a photograph").CheckAsync();
        await page.Locator("#photo-choose").SetInputFilesAsync(Path.Combine(Repository.Root, "demo", "canal-basin.jpg"));
        var overlay = page.Locator("#frame-overlay");
        await overlay.WaitForAsync();
        await page.GetByLabel("Upright").CheckAsync();
        await overlay.PressAsync("Shift+ArrowLeft");
        await overlay.PressAsync("Shift+ArrowUp");
        await page.GetByLabel("Marks the subject").CheckAsync();
        await overlay.PressAsync("ArrowUp");
        foreach (var (key, times) in new[] { ("ArrowLeft", 4), ("ArrowUp", 23), ("Shift+ArrowLeft", 4), ("Shift+ArrowDown", 10) })
        {
            for (var press = 0; press < times; press++)
            {
                await overlay.PressAsync(key);
            }
        }

        await page.GetByText("Room about the subject").WaitForAsync();
        await TopAsync(".overlay");
        await look("frame");
        await MovingAsync(overlay);
        await page.PressAsync("On to Meter");
    }

    // The cyclist rides away and the organ's crank wheel turns.
    private async Task MovingAsync(ILocator overlay)
    {
        await MarkMovingAsync(overlay, (0.515, 0.484), (0.571, 0.564), "cyclist", "goesAway");
        await page.Locator("#moving-add").ClickAsync();
        await overlay.DragOnPhotographAsync((0.596, 0.497), (0.649, 0.5675));
        await page.Locator("#moving-name").FillAsync("crank wheel");
        await page.Locator("#moving-how").SelectOptionAsync("turns");
        await page.Locator("#moving-turn").FillAsync("20");
        await page.Locator("#moving-closer").ClickAsync();
        await overlay.DragOnPhotographAsync((0.596, 0.497), (0.649, 0.5675));
        await TopAsync(".overlay");
        await look("frame-moving");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this", Exact = true }).ClickAsync();
        await page.Locator("#moving-add").WaitForAsync();
    }

    private async Task MarkMovingAsync(ILocator overlay, (double X, double Y) from, (double X, double Y) to, string name, string how)
    {
        await page.Locator("#moving-add").ClickAsync();
        await overlay.DragOnPhotographAsync(from, to);
        await page.Locator("#moving-name").FillAsync(name);
        await page.Locator("#moving-how").SelectOptionAsync(how);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this", Exact = true }).ClickAsync();
        await page.Locator("#moving-add").WaitForAsync();
    }

    private async Task MeterAsync()
    {
        await page.AtStepAsync("Meter");
        await page.Locator("#meter-scene img").DrawnAsync();
        await ToneAsync((0.3465, 0.275), "elevator in the sun", "textured highlight", "meter-touch");
        await ToneAsync((0.3585, 0.36), "edge of a silo", "open shadow");
        await ToneAsync((0.66, 0.13), "blue sky", "may burn");
        await ToneAsync((0.10, 0.4725), "trees", "may block");
        await TopAsync("#meter-scene");
        await look("meter");
        await TopAsync("h2:has(+ .ladder)");
        await look("meter-ladder");
        await page.PressAsync("On to Plan");
    }

    private async Task ToneAsync((double X, double Y) place, string name, string wanted, string? sight = null)
    {
        await page.Locator("#meter-scene").TouchAtAsync(place.X, place.Y);
        await page.Locator("#tone-name").FillAsync(name);
        await page.Locator("#new-tone").GetByLabel(wanted, new() { Exact = true }).CheckAsync();
        if (sight is not null)
        {
            await TopAsync("#meter-scene");
            await look(sight);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Add this tone" }).ClickAsync();
        await page.Locator(".tones").GetByText(name, new() { Exact = true }).WaitForAsync();
    }

    private async Task PlanAsync()
    {
        await page.AtStepAsync("Plan");
        await page.Locator("#plan-print").WaitForAsync();
        await page.Locator("#plan-flash").FillAsync("0.6");
        await page.GetByText("This flash is too short for a hand.").WaitForAsync();
        await page.GetByText("What the flash is pointed at").ClickAsync();
        await page.Locator("#flash-surface").FillAsync("EV 11");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this reading" }).ClickAsync();
        await page.GetByText("This flash is too short for a hand.").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await page.GetByText("What the flash is pointed at").ClickAsync();
        await page.WaitForFunctionAsync(
            """
            () => {
              const canvas = document.getElementById('plan-print');
              const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
              return pixels.some((value, i) => i % 4 === 3 && value > 0);
            }
            """);
        await TopAsync(".rail");
        await page.Locator("#plan-moving").WaitForAsync();
        await look("plan");
        await page.GetByLabel("As if all stood").CheckAsync();
        await look("plan-still");
        await page.GetByLabel("With what moves").CheckAsync();
        await page.PressAsync("Keep this plan");
    }

    private async Task FlashAsync()
    {
        await page.AtStepAsync("Flash");
        await look("flash");
        await page.PressAsync("Start the flash");
        await page.GetByText("Stay on the even surface").WaitForAsync();
        await page.Clock.FastForwardAsync(9_000);
        await look("flash-running");
        await page.Clock.FastForwardAsync(62_000);
        await page.PressAsync("Cover the hole now");
        await page.GetByText("flash given").WaitForAsync();
        await look("flash-given");
        await page.PressAsync("On to Expose");
    }

    private async Task ExposeAsync()
    {
        await page.AtStepAsync("Expose");
        await look("expose");
        await page.PressAsync("Open the hole");
        await page.GetByText("left in this light").WaitForAsync();
        await page.Clock.FastForwardAsync(20_000);
        await page.GetByRole(AriaRole.Button, new() { Name = "Thin cloud" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Thin cloud", Pressed = true }).WaitForAsync();
        await page.Clock.FastForwardAsync(15_000);
        await page.GetByRole(AriaRole.Group, new() { Name = "crank wheel" }).GetByLabel("stands").CheckAsync();
        await look("expose-running");
        await page.Clock.FastForwardAsync(60_000);
        await page.Primary().Filter(new() { HasText = "Close the hole now" }).WaitForAsync();
        await look("expose-over");
        await page.PressAsync("Close the hole now");
        await page.GetByText("Open it again").WaitForAsync();
        await look("expose-closed");
        await page.PressAsync("On to Process");
    }

    private async Task ProcessAsync()
    {
        await page.AtStepAsync("Process");
        await look("process");
        await page.PressAsync("Sheet is in the developer");
        foreach (var (bath, go, seconds) in new[]
                 {
                     ("Developer", "Now in the stop bath", 40), ("Stop bath", "Now in the fixer", 5), ("Fixer", "Now in the wash", 70), ("Wash", "Wash is over", 130),
                 })
        {
            await page.GetByRole(AriaRole.Heading, new() { Name = bath, Level = 2, Exact = true }).WaitForAsync();
            await page.Clock.FastForwardAsync(seconds * 1000);
            await look($"process-{bath.Split(' ')[0].ToLowerInvariant()}");
            await page.PressAsync(go);
        }

        await page.GetByText("The sheet is through.").WaitForAsync();
        await look("process-through");
        await page.PressAsync("On to Judge");
    }

    private async Task JudgeAsync()
    {
        await page.AtStepAsync("Judge");
        await page.GetByRole(AriaRole.Button, new() { Name = "edge of a silo: half a stop darker than wanted" }).ClickAsync();
        await page.GetByLabel("Keeper", new() { Exact = true }).CheckAsync();
        await TopAsync(".rail");
        await look("judge");
        await page.PressAsync("Judge it so");
        await page.GetByText("Next time, in the same light").WaitForAsync();
        await page.GetByText("What this sheet taught").ClickAsync();
        await page.Locator("#taught p").First.WaitForAsync();
        await look("judge-judged");
        await page.Locator("#card").ClickAsync();
        await page.Locator(".sheet-card img").DrawnAsync();
        await look("ledger-card");
    }
}
