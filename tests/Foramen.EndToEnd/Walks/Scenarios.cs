using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Walks;

/// <summary>The twelve walks. The outing, its places and its gear are the demo's, and invented.</summary>
internal static class Scenarios
{
    public static IReadOnlyList<Scenario> All { get; } =
    [
        new("First start on a new phone, until the hole is open", FirstStartAsync)
        {
            Fresh = true,
            Stumbles =
            [
                "adding the camera and the paper from *New sheet* led to the Bench and left one there: it leads back to *New sheet*",
                "*Save* lay in the middle of the screen, not where the large action always lies",
                "a flash too short for a hand asked for another surface and led nowhere: a touch leads to where that is said",
            ],
        },
        new("Plan a day: a place, its light, the order of the sheets, whether to wait", PlanDayAsync)
        {
            Stumbles = ["the chart of the year was too pale for the sun: it has an edge"],
        },
        new("Frame with a photograph, and by hand", FrameAsync)
        {
            Stumbles = ["whether a drag moves the frame or marks the subject was chosen out of sight of the photograph: it is chosen right below it"],
        },
        new("Meter three tones on the photograph and one with a hand meter", MeterAsync)
        {
            Before = ToMeterAsync,
            Stumbles = ["names of tones that lie beside each other were written over each other: one goes above or below its pin"],
        },
        new("Plan with a flash, and a mask in the predicted print", PlanAsync)
        {
            Before = BeforePlanAsync,
            Stumbles = ["*46 % most is lost to…* ran on after the number: it stands on its own line"],
        },
        new("Expose while a cloud passes", walker => walker.ExposeAsync(cloud: true))
        {
            Stumbles = ["whoever left the page while the hole was open heard nothing at its end: what runs is heard, and stands on every page"],
        },
        new("Process with the bottle at hand", ProcessAsync)
        {
            Before = ExposedAsync,
            Stumbles = ["where a label took two lines, fields beside each other stood on different lines"],
        },
        new("Judge a sheet half a stop too light, see what it taught, take the re-shoot card", JudgeAsync)
        {
            Before = ExposedAsync,
            Stumbles =
            [
                "two odds stood side by side, *67 % 64 %*: the second has its own line",
                "*What your sheets taught* was two and a half screens wide, because of a hidden table: it is as wide as the phone",
            ],
        },
        new("A new paper: test strip planned, made, read, fitted", StripAsync)
        {
            Stumbles = ["a number and its interval ran together, *13 9 to 18.8*: the interval has its own line"],
        },
        new("A new camera: its hole on a scan, sighting marks to print", CameraAsync),
        new("Measure a print on its picture, and its card", MeasureAsync) { Before = BeforeMeasureAsync },
        new("The evening: dark look, a copy handed on and taken in, the same without a network", EveningAsync)
        {
            Stumbles = ["what became of a copy handed on or taken in was said at the top of a long page, out of sight: it is said where the touch was"],
        },
    ];

    private static async Task FirstStartAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#outing-name", "Canal basin");
                await walker.PressAsync("Start an outing");
            },
            walker.Title("Canal basin"));
        await walker.StepAsync(() => walker.PressAsync("New sheet"), walker.Title("New sheet"));
        await walker.StepAsync(() => walker.LinkAsync("Add a camera"), page.Locator("#camera-name"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#camera-name", "Box A");
                await walker.TypeAsync("#camera-hole", "0.35");
                await walker.TypeAsync("#camera-focal", "63");
                await walker.TypeAsync("#camera-width", "127");
                await walker.TypeAsync("#camera-height", "102");
                await walker.PressAsync("Save");
            },
            walker.Title("New sheet"));
        await walker.StepAsync(() => walker.LinkAsync("Add a paper"), page.Locator("#paper-name"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#paper-name", "Positive");
                await walker.ChooseAsync("Direct positive");
                await walker.PressAsync("Save");
            },
            walker.Title("New sheet"));
        await walker.StepAsync(() => walker.PressAsync("Load the sheet"), walker.Title("Frame"));
        await walker.PhotographAsync();
        await walker.OnAsync("Meter");
        await page.Locator("#meter-scene img").DrawnAsync();
        await walker.ToneAsync(0.3465, 0.275, "elevator", "textured highlight");
        await walker.ToneAsync(0.56, 0.83, "towpath", "mid");
        await walker.StepAsync(() => walker.PressAsync("On to Plan"), page.Locator("#plan-print"));
        await walker.StepAsync(() => walker.PressAsync("Keep this plan"), page.Locator("h1").Filter(new() { HasTextRegex = new("^(Flash|Expose)$") }));
        if (await walker.Title("Flash").IsVisibleAsync())
        {
            await walker.StepAsync(() => walker.PressAsync("Start the flash"), walker.Says("Stay on the even surface"));
            await page.Clock.FastForwardAsync(2_000);
            await walker.StepAsync(() => walker.PressAsync("Cover the hole now"), walker.Says("flash given"));
            await walker.OnAsync("Expose");
        }

        await walker.StepAsync(() => walker.PressAsync("Open the hole"), walker.Says("left in this light"));
    }

    private static async Task PlanDayAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("a.spot").First), page.Locator(".chart").First);
        await walker.StepAsync(() => walker.ChooseAsync("Hazy"), page.Locator("input:checked + .face").Filter(new() { HasText = "Hazy" }));
        await walker.StepAsync(() => walker.ButtonAsync("Show the whole year"), page.Locator(".chart .fill"));
        await walker.StepAsync(() => walker.PlaceAsync("Outing"), walker.Title("Second Saturday of May"));
        await walker.StepAsync(() => walker.LinkAsync("Plan the day"), walker.Title("The day's plan"));
        await walker.StepAsync(() => walker.PressAsync("Plan it"), page.Locator(".steps li"));
        await walker.StepAsync(() => walker.ButtonAsync("What are the odds?"), page.Locator(".measure"));
    }

    private static async Task FrameAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.LoadAsync("Box A", "direct-positive, box opened in spring");
        await walker.StepAsync(() => walker.ChooseAsync("By hand"), page.Locator("#distance"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#distance", "85");
                await walker.TypeAsync("#height", "42");
                await page.Locator("#height").BlurAsync();
            },
            walker.Says("Stand at least"));
        await walker.StepAsync(() => walker.ChooseAsync("On a photograph"), page.Locator("label.pick").First);
        await walker.PhotographAsync();
        await walker.StepAsync(() => walker.ChooseAsync("Upright"), page.Locator("input:checked + .face").Filter(new() { HasText = "Upright" }));
        await walker.StepAsync(() => walker.DragAsync("#frame-overlay", (0.5, 0.5), (0.4, 0.42)), walker.Says("to the left"));
        await walker.StepAsync(() => walker.ChooseAsync("Marks the subject"), page.Locator("input:checked + .face").Filter(new() { HasText = "Marks the subject" }));
        await walker.StepAsync(() => walker.DragAsync("#frame-overlay", (0.32, 0.2), (0.42, 0.6)), walker.Says("Room about the subject"));
        await walker.OnAsync("Meter");
    }

    private static async Task ToMeterAsync(IPage page)
    {
        var walker = new Walker(page, name: null);
        await walker.LoadAsync("Box A", "direct-positive, box opened in spring");
        await walker.PhotographAsync();
        await walker.OnAsync("Meter");
        await page.Locator("#meter-scene img").DrawnAsync();
    }

    private static async Task MeterAsync(Walker walker)
    {
        await walker.ToneAsync(0.3465, 0.275, "elevator in the sun", "textured highlight");
        await walker.ToneAsync(0.3585, 0.275, "edge of a silo", "open shadow");
        await walker.ToneAsync(0.56, 0.83, "towpath", "mid");
        await walker.StepAsync(() => walker.ButtonAsync("Add a reading by hand"), walker.Page.Locator("#tone-reading"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#tone-name", "trees");
                await walker.ChooseAsync("may block", walker.Page.Locator("#new-tone"));
                await walker.TypeAsync("#tone-reading", "EV 9");
                await walker.ButtonAsync("Add this tone");
            },
            walker.Page.Locator(".tones").GetByText("trees", new() { Exact = true }));
        await walker.StepAsync(() => walker.PressAsync("On to Plan"), walker.Page.Locator("#plan-time"));
    }

    private static async Task BeforePlanAsync(IPage page)
    {
        await ToMeterAsync(page);
        var walker = new Walker(page, name: null);
        await walker.ToneAsync(0.3465, 0.275, "elevator in the sun", "textured highlight");
        await walker.ToneAsync(0.3585, 0.275, "edge of a silo", "open shadow");
        await walker.PlaceAsync("Outing");
        await walker.Title("Second Saturday of May").WaitForAsync();
    }

    private static async Task PlanAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.GearAsync("Box A");
        await walker.StepAsync(() => walker.LinkAsync("A mask"), page.Locator("#mask-text"));
        await walker.StepAsync(() => walker.TypeAsync("#mask-text", "CANAL 7"), page.Locator(".template svg"));
        await walker.StepAsync(() => walker.ButtonAsync("Keep this mask"), walker.Says("is in the journal"));
        await walker.StepAsync(() => walker.PlaceAsync("Sheet"), walker.Title("Sheet"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("a.sheet-card").First), page.Locator(".rail"));
        await walker.StepOfSheetAsync("Plan");
        await walker.StepAsync(() => walker.ChooseAsync("CANAL 7"), page.Locator("input:checked + .face").Filter(new() { HasText = "CANAL 7" }));
        await walker.StepAsync(() => walker.SlideAsync("#plan-flash", "0.6"), walker.Says("too short for a hand"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TouchAsync(page.Locator("summary").Filter(new() { HasText = "What the flash is pointed at" }));
                await walker.TypeAsync("#flash-surface", "EV 11");
                await walker.ButtonAsync("Take this reading");
            },
            page.Locator("#plan-flash"));
        await walker.StepAsync(() => walker.PressAsync("Keep this plan"), walker.Title("Flash"));
    }

    private static async Task ExposedAsync(IPage page)
    {
        var walker = new Walker(page, name: null);
        await walker.ExposeAsync(cloud: false);
        await walker.OnAsync("Process");
    }

    private static async Task ProcessAsync(Walker walker)
    {
        await walker.StepAsync(() => walker.PressAsync("Sheet is in the developer"), walker.Page.GetByRole(AriaRole.Heading, new() { Name = "Developer", Level = 2, Exact = true }));
        foreach (var (go, next) in new[] { ("Now in the stop bath", "Stop bath"), ("Now in the fixer", "Fixer"), ("Now in the wash", "Wash") })
        {
            await walker.Page.Clock.FastForwardAsync(90_000);
            await walker.StepAsync(() => walker.PressAsync(go), walker.Page.GetByRole(AriaRole.Heading, new() { Name = next, Level = 2, Exact = true }));
        }

        await walker.Page.Clock.FastForwardAsync(480_000);
        await walker.StepAsync(() => walker.PressAsync("Wash is over"), walker.Says("The sheet is through."));
        await walker.OnAsync("Judge");
    }

    private static async Task JudgeAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepOfSheetAsync("Judge");
        await walker.StepAsync(
            () => walker.TouchAsync(page.GetByRole(AriaRole.Button, new() { Name = "painted steel: half a stop lighter than wanted" })),
            page.Locator("output").Filter(new() { HasText = "too light" }));
        await walker.StepAsync(() => walker.ChooseAsync("Keeper"), page.Locator("input:checked + .face").Filter(new() { HasText = "Keeper" }));
        await walker.StepAsync(() => walker.PressAsync("Judge it so"), walker.Says("Next time, in the same light"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("summary").Filter(new() { HasText = "What this sheet taught" })), page.Locator("details[open]"));
        await walker.StepAsync(() => walker.PressAsync("Load the next sheet"), walker.Title("Frame"));
    }

    private static async Task StripAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(() => walker.PlaceAsync("Bench"), walker.Title("Bench"));
        await walker.StepAsync(() => walker.LinkAsync("Add a paper"), page.Locator("#paper-name"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#paper-name", "New box");
                await walker.PressAsync("Save");
            },
            walker.Title("Bench"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("a.gear").Filter(new() { HasText = "New box" })), walker.Title("New box"));
        await walker.StepAsync(() => walker.LinkAsync("Test strips"), walker.Title("Strips"));
        await walker.StepAsync(() => walker.LinkAsync("Plan a strip"), page.Locator("#strip-reading"));
        await walker.StepAsync(() => walker.TypeAsync("#strip-reading", "EV 13"), page.Locator("main"));
        await walker.StepAsync(() => walker.PressAsync("It is made"), page.Locator("#strip-first-tone"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#strip-first-tone", "2");
                await walker.TypeAsync("#strip-last-tone", "7");
                await walker.TypeAsync("#strip-match", "5");
                await walker.PressAsync("Write it down");
            },
            page.Locator(".chart .band"));
    }

    private static async Task CameraAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(() => walker.PlaceAsync("Bench"), walker.Title("Bench"));
        await walker.StepAsync(() => walker.LinkAsync("Add a camera"), page.Locator("#camera-name"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#camera-name", "Box B");
                await walker.TypeAsync("#camera-hole", "0.3");
                await walker.TypeAsync("#camera-focal", "70");
                await walker.TypeAsync("#camera-width", "127");
                await walker.TypeAsync("#camera-height", "102");
                await walker.PressAsync("Save");
            },
            walker.Title("Bench"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("a.gear").Filter(new() { HasText = "Box B" })), walker.Title("Box B"));
        await walker.StepAsync(() => walker.LinkAsync("Measure the hole on a scan"), page.Locator("#hole-dpi"));
        await walker.StepAsync(() => walker.GiveAsync("#hole-scan", "demo", "scans", "hole.png"), page.Locator(".scan svg"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#hole-dpi", "4800");
                await walker.PressAsync("Measure");
            },
            page.Locator("path.found"));
        await walker.StepAsync(() => walker.PressAsync("Use it from now on"), walker.Title("Box B"));
        await walker.StepAsync(() => walker.LinkAsync("Sighting marks for the box"), page.Locator(".template svg"));
    }

    private static async Task BeforeMeasureAsync(IPage page)
    {
        var walker = new Walker(page, name: null);
        await walker.LoadAsync("Box A", "grade 2, resin-coated");
        await walker.ToPlanAsync();
        await walker.StepAsync(() => walker.PressAsync("Keep this plan"), page.Locator("h1").Filter(new() { HasTextRegex = new("^(Flash|Expose)$") }));
        await walker.StepOfSheetAsync("Judge");
    }

    private static async Task MeasureAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(() => walker.GiveAsync("#print-picture", "demo", "scans", "print.jpg"), page.Locator("#measure summary"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("#measure summary")), page.Locator("#measure-ground"));
        await walker.StepAsync(
            async () =>
            {
                await walker.TypeAsync("#measure-ground", "0.35");
                await walker.ButtonAsync("Measure");
            },
            page.Locator("#measure-tones"));
        await walker.StepAsync(() => walker.ButtonAsync("Take these into the judgement"), page.GetByRole(AriaRole.Status).Filter(new() { HasText = "judgement" }));
        await walker.StepAsync(() => walker.ChooseAsync("Keeper"), page.Locator("input:checked + .face").Filter(new() { HasText = "Keeper" }));
        await walker.StepAsync(() => walker.PressAsync("Judge it so"), page.Locator("#card"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("#card")), page.Locator(".sheet-card"));
    }

    private static async Task EveningAsync(Walker walker)
    {
        var page = walker.Page;
        await walker.StepAsync(() => walker.PlaceAsync("Settings"), walker.Title("Settings"));
        await walker.StepAsync(() => walker.ChooseAsync("Night"), page.Locator("html[data-theme='night']"));
        await walker.StepAsync(() => walker.PlaceAsync("Ledger"), walker.Title("Ledger"));
        IDownload? copy = null;
        await walker.StepAsync(async () => copy = await page.RunAndWaitForDownloadAsync(() => walker.ButtonAsync("Hand on a copy")), walker.Title("Ledger"));
        var file = await copy!.PathAsync();
        await walker.StepAsync(() => walker.GiveAsync("#import", file), page.Locator("main .notice").Filter(new() { HasTextRegex = new("here already|taken in", System.Text.RegularExpressions.RegexOptions.IgnoreCase) }));
        await page.WaitUntilOfflineReadyAsync();
        await page.Context.SetOfflineAsync(true);
        await walker.StepAsync(() => page.ReloadAsync(), page.Locator("a.sheet-card"));
        await walker.StepAsync(() => walker.TouchAsync(page.Locator("a.sheet-card").Last), page.Locator(".rail"));
    }
}
