using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd;

/// <summary>Every place and every step on a large screen, with axe and every action by the Tab key; a class of its own, so that it runs beside the phone's.</summary>
public sealed class EveryStepOnALargeScreenTests(FieldStage stage)
{
    [Fact]
    public async Task Axe_finds_nothing_and_Tab_reaches_everything_on_a_large_screen()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.DesktopAsync(home.Address);
        var page = await context.NewPageAsync();
        var found = new List<string>();
        await new Tour(page, async sight =>
        {
            await Guide.PictureAsync(page, $"desktop-{sight}");
            await Guide.ToEndAsync(page);
            found.AddRange(await Axe.FindAsync(page, sight));
            found.AddRange(await Keys.FindUnreachedAsync(page, sight));
            await page.EvaluateAsync("() => scrollTo(0, 0)");
        }).WalkAsync();
        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
