using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>Sighting with the phone: what its sensors say is handed through to the fields, from north where the device knows it.</summary>
public sealed class SightingTests(FieldStage stage)
{
    // Both events come, as on a device with a compass: the one that does not know north counts alpha from anywhere.
    private const string Hold =
        """
        ({ alpha, beta }) => {
          clearInterval(window.held);
          window.held = setInterval(() => {
            dispatchEvent(new DeviceOrientationEvent('deviceorientation', { alpha: 7, beta, gamma: 0, absolute: false }));
            if (alpha !== null) {
              dispatchEvent(new DeviceOrientationEvent('deviceorientationabsolute', { alpha, beta, gamma: 0, absolute: true }));
            }
          }, 50);
        }
        """;

    [Fact]
    public async Task A_house_is_sighted_by_its_edges_and_its_top_and_takes_its_hours()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        await page.OpenAsync("/outing/place");
        await page.Locator("#place-name").FillAsync("Grain elevator");
        await page.Locator("#place-latitude").FillAsync("52.5");
        await page.Locator("#place-longitude").FillAsync("5.25");

        // Upright, alpha 42 is a turn of 42° to the left of north.
        await page.EvaluateAsync(Hold, new { alpha = 42, beta = 90 });
        await page.Locator("#place-sight").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "The camera looks towards: 318°" }).ClickAsync();
        Assert.Equal("318", await page.Locator("#place-faces").InputValueAsync());

        await page.Locator("#shade-add").ClickAsync();
        await page.Locator("#shade-0-name").FillAsync("mill");
        await page.Locator("#shade-0-sight").ClickAsync();
        async Task TakeAsync(double alpha, double beta, string button)
        {
            await page.EvaluateAsync(Hold, new { alpha, beta });
            await page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        }

        await TakeAsync(280, 90, "Left edge: 80°");
        await TakeAsync(160, 90, "Right edge: 200°");
        await TakeAsync(220, 160, "Top, in its middle: 70°");
        await page.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        Assert.Equal("70", await page.Locator("#shade-0-top").InputValueAsync());
        await page.PressAsync("Save");
        await page.GetByText("Mill shades the facade while the sun is between 80° and 200° and lower than 70°.").WaitForAsync();
    }

    [Fact]
    public async Task A_device_without_a_compass_gives_the_height_and_says_that_it_has_none()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        await page.OpenAsync("/outing/place");
        await page.EvaluateAsync(Hold, new { alpha = (double?)null, beta = 102 });
        await page.Locator("#shade-add").ClickAsync();
        await page.Locator("#shade-0-sight").ClickAsync();
        await page.GetByText("does not say where north is").WaitForAsync();
        Assert.True(await page.GetByRole(AriaRole.Button, new() { Name = "Left edge", Exact = true }).IsDisabledAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Top, in its middle: 12°" }).ClickAsync();
        Assert.Equal("12", await page.Locator("#shade-0-top").InputValueAsync());
    }
}
