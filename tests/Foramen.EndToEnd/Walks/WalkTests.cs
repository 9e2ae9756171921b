using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Walks;

/// <summary>
/// Twelve scenarios on a phone, as someone new would walk them, counted into docs/scenarios.md. Runs only with FORAMEN_WALKS=1; with FORAMEN_WALKS_PICTURES
/// set to a folder every step is pictured there.
/// </summary>
public sealed class WalkTests(FieldStage stage)
{
    [Fact]
    public async Task The_twelve_walks_are_walked_and_counted()
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("FORAMEN_WALKS") == "1", "Walks are counted on request: FORAMEN_WALKS=1.");
        using var demo = await HomeProcess.StartAsync(Tour.DemoJournal);
        var walked = new List<(Scenario Scenario, Walker Walker)>();
        var stopped = new List<string>();
        foreach (var scenario in Scenarios.All)
        {
            await using var context = await stage.PhoneAsync(scenario.Fresh ? stage.Home.Address : demo.Address);
            var page = await context.NewPageAsync();
            page.SetDefaultTimeout(30_000);
            page.PageError += (_, error) => stopped.Add($"“{scenario.Name}”: {error}");
            await page.Clock.InstallAsync(new() { TimeDate = Tour.DemoEvening });
            await page.OpenAsync("/");
            var walker = new Walker(page, $"{walked.Count + 1:00}");
            walked.Add((scenario, walker));
            try
            {
                if (!scenario.Fresh)
                {
                    await page.GetByRole(AriaRole.Heading, new() { Name = "Second Saturday of May" }).WaitForAsync();
                    await scenario.Before(page);
                }

                await scenario.Walk(walker);
            }
            catch (Exception exception) when (exception is TimeoutException or PlaywrightException)
            {
                stopped.Add($"“{scenario.Name}”, after step {walker.Steps}: {exception.Message}");
            }
        }

        Assert.True(stopped.Count == 0, string.Join('\n', stopped));
        Assert.Equal(12, walked.Count);
        await ScenarioPage.WriteAsync(walked);
    }
}
