using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>
/// Every place and every step, with axe in each theme and every action by the Tab key. With FORAMEN_GUIDE=1 the pictures of docs/guide are taken anew.
/// </summary>
public sealed class EveryStepTests(FieldStage stage)
{
    private static readonly string Guide = Path.Combine(Repository.Root, "docs", "guide");

    private static bool TakesPictures => Environment.GetEnvironmentVariable("FORAMEN_GUIDE") == "1";

    [Fact]
    public async Task Axe_finds_nothing_on_the_phone_in_any_theme()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.PhoneAsync(home.Address);
        var page = await context.NewPageAsync();
        var found = new List<string>();
        await new Tour(page, async sight =>
        {
            await PictureAsync(page, $"phone-{sight}");
            await ToEndAsync(page);
            foreach (var theme in new[] { "night", "red", "paper" })
            {
                await page.ThemeAsync(theme);
                found.AddRange(await Axe.FindAsync(page, $"{sight} in {theme}", coloursOnly: theme != "paper"));
            }

            await page.EvaluateAsync("() => scrollTo(0, 0)");
        }).WalkAsync();
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    [Fact]
    public async Task Axe_finds_nothing_and_Tab_reaches_everything_on_a_large_screen()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.DesktopAsync(home.Address);
        var page = await context.NewPageAsync();
        var found = new List<string>();
        await new Tour(page, async sight =>
        {
            await PictureAsync(page, $"desktop-{sight}");
            await ToEndAsync(page);
            found.AddRange(await Axe.FindAsync(page, sight));
            found.AddRange(await Keys.FindUnreachedAsync(page, sight));
            await page.EvaluateAsync("() => scrollTo(0, 0)");
        }).WalkAsync();
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    // There the large action stands where it belongs, and covers nothing.
    private static async Task ToEndAsync(IPage page) => await page.EvaluateAsync("() => scrollTo(0, document.documentElement.scrollHeight)");

    private static async Task PictureAsync(IPage page, string name)
    {
        if (TakesPictures)
        {
            Directory.CreateDirectory(Guide);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Guide, name + ".jpg"), Type = ScreenshotType.Jpeg, Quality = 85, Animations = ScreenshotAnimations.Disabled });
        }
    }
}
