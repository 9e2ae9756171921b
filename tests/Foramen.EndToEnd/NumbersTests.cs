using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd;

/// <summary>Numbers on a screen whose language writes a comma before tenths, while pictures and sliders go on being drawn with points.</summary>
public sealed class NumbersTests(FieldStage stage)
{
    [Fact]
    public async Task A_comma_is_shown_and_taken_and_nothing_drawn_breaks()
    {
        await using var context = await stage.PhoneAsync(locale: "de-DE");
        var page = await context.NewPageAsync();
        var complaints = new List<string>();
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                complaints.Add(message.Text);
            }
        };
        await page.OpenAsync("/bench/camera");
        await page.Locator("#camera-name").FillAsync("Box A");
        await page.Locator("#camera-hole").FillAsync("0,35");
        await page.Locator("#camera-focal").FillAsync("63,5");
        await page.Locator("#camera-width").FillAsync("127");
        await page.Locator("#camera-height").FillAsync("102");
        await page.PressAsync("Save");
        await page.GetByText("0,35 mm at 63,5 mm").WaitForAsync();

        // Every part a screen is made of, drawings included.
        await page.OpenAsync("/gallery");
        await page.Locator(".ladder svg").First.WaitForAsync();
        Assert.Empty(complaints);
    }
}
