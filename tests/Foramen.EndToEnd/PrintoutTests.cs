using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Foramen.EndToEnd;

/// <summary>What is printed, saved as PDF by the browser and read by another library: it is all on the page, and nothing of it is cut off.</summary>
public sealed class PrintoutTests(FieldStage stage)
{
    [Fact]
    public async Task Contact_sheet_sheet_card_and_days_plan_fit_the_paper()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.DesktopAsync(home.Address);
        var page = await context.NewPageAsync();
        await page.Clock.InstallAsync(new() { TimeDate = Tour.DemoEvening });
        await page.OpenAsync("/ledger");
        await page.GetByRole(AriaRole.Link).Filter(new() { HasText = "The grain elevator" }).First.ClickAsync();
        await page.Locator("#card").ClickAsync();
        await page.Locator(".sheet-card img").DrawnAsync();
        await IsOnOnePageAsync(page, "The grain elevator", "f/180", "Density planned", "Keeper");

        await page.OpenAsync("/ledger/contact");
        await page.Locator(".contact img").First.DrawnAsync();
        await IsOnOnePageAsync(page, "Contact sheet", "White water at the weir", "The lift bridge, closed");

        await page.OpenAsync("/outing/day");
        await page.Locator("#plan-date").WaitForAsync();
        await page.PressAsync("Plan it");
        await page.Locator(".steps li").First.WaitForAsync();
        await IsOnOnePageAsync(page, "Set up at Canal basin", "Process sheet 2");
    }

    [Theory]
    [InlineData("night")]
    [InlineData("red")]
    public async Task Whatever_the_screen_looks_like_paper_gets_dark_ink(string theme)
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.DesktopAsync(home.Address);
        var page = await context.NewPageAsync();
        await page.Clock.InstallAsync(new() { TimeDate = Tour.DemoEvening });
        await page.OpenAsync("/ledger/contact");
        await page.Locator(".contact img").First.DrawnAsync();
        await page.EvaluateAsync("theme => { document.documentElement.dataset.theme = theme; }", theme);
        using var document = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true }));
        var letters = document.GetPage(1).Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).ToList();
        Assert.NotEmpty(letters);

        // WCAG 2.2 (1.4.6) asks 7:1; on white that is a grey of #595959, 0.35 of the way to white.
        Assert.All(letters, letter =>
        {
            var (red, green, blue) = letter.Color.ToRGBValues();
            Assert.True((0.2126 * red) + (0.7152 * green) + (0.0722 * blue) < 0.35, $"“{letter.Value}” is printed in {letter.Color}.");
        });
    }

    private static async Task IsOnOnePageAsync(IPage page, params string[] texts)
    {
        using var document = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true }));
        var paper = document.GetPage(1);
        Assert.Equal(1, document.NumberOfPages);
        var words = paper.GetWords().ToList();
        var said = string.Join(' ', words.Select(word => word.Text));
        Assert.All(texts, text => Assert.Contains(text, said, StringComparison.Ordinal));

        // 12 mm of margin are 34 points.
        Assert.All(words, word => Assert.True(word.BoundingBox.Left >= 33 && word.BoundingBox.Right <= paper.Width - 33, $"“{word.Text}” runs into the margin."));
    }
}
