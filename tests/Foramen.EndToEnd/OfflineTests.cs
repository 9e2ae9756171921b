using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd;

public sealed class OfflineTests(FieldStage stage)
{
    [Fact]
    public async Task After_the_first_load_everything_works_without_a_network()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        await page.OpenAsync("/");
        await page.WaitUntilOfflineReadyAsync();
        await context.SetOfflineAsync(true);
        foreach (var address in new[] { "/", "/bench/camera", "/ledger" })
        {
            await page.OpenAsync(address);
        }

        await page.OpenAsync("/");
        await page.GetByLabel("Name of the outing").FillAsync("Canal basin");
        await page.Primary().ClickAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Heading, new() { Name = "Canal basin" }).WaitForAsync();
        await page.ReloadAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Heading, new() { Name = "Canal basin" }).WaitForAsync();
    }
}
