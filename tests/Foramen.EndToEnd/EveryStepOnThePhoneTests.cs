using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd;

/// <summary>Every place and every step on a phone, with axe in each theme. With FORAMEN_GUIDE=1 the pictures of docs/guide are taken anew.</summary>
public sealed class EveryStepOnThePhoneTests(FieldStage stage)
{
    [Fact]
    public async Task Axe_finds_nothing_on_the_phone_in_any_theme()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.PhoneAsync(home.Address);
        var page = await context.NewPageAsync();
        var found = new List<string>();
        await new Tour(page, async sight =>
        {
            await Guide.PictureAsync(page, $"phone-{sight}");
            await Guide.ToEndAsync(page);
            foreach (var theme in new[] { "night", "red", "paper" })
            {
                await page.ThemeAsync(theme);
                found.AddRange(await Axe.FindAsync(page, $"{sight} in {theme}", coloursOnly: theme != "paper"));
            }

            await page.EvaluateAsync("() => scrollTo(0, 0)");
        }).WalkAsync();
        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
