using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>
/// Text at twice its size (WCAG 2.2, criteria 1.4.4 and 1.4.10) and no motion where none is wanted (2.3.3), on every address that can be reached
/// without a long journey, with the demo outing.
/// </summary>
public sealed class TextSizeTests(FieldStage stage)
{
    private static readonly string[] Fixed =
    [
        "/", "/outing/place", "/outing/day", "/sheet", "/sheet/new", "/bench", "/bench/camera", "/bench/paper", "/bench/bottle", "/bench/kit", "/ledger", "/ledger/learned",
        "/ledger/contact", "/settings", "/workshop", "/gallery",
    ];

    private static readonly string[] Steps = ["frame", "meter", "plan", "flash", "expose", "process", "judge"];

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task At_twice_the_text_size_nothing_is_cut_off_and_nothing_scrolls_sideways(int wide)
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = wide < 800 ? await stage.PhoneAsync(home.Address) : await stage.DesktopAsync(home.Address);
        var page = await OpenAsync(context);
        await page.TextSizeAsync(twice: true);
        var misfits = new List<string>();
        var addresses = await AddressesAsync(page);
        foreach (var address in addresses)
        {
            await page.WanderAsync(address);
            if (address == "/outing/day")
            {
                await page.PressAsync("Plan it");
                await page.Locator(".steps li").First.WaitForAsync();
            }

            misfits.AddRange(await Layout.MisfitsAsync(page, address));
        }

        Assert.True(addresses.Count > 30, $"Only {addresses.Count} addresses were found.");
        Assert.True(misfits.Count == 0, string.Join('\n', misfits));
    }

    [Fact]
    public async Task Nothing_moves_where_no_motion_is_wanted()
    {
        using var home = await HomeProcess.StartAsync(Tour.DemoJournal);
        await using var context = await stage.PhoneAsync(home.Address);
        var page = await OpenAsync(context);
        var moving = new List<string>();
        foreach (var address in await AddressesAsync(page))
        {
            await page.WanderAsync(address);
            moving.AddRange((await Layout.MotionsAsync(page)).Select(one => $"{address}: {one}"));
        }

        Assert.Empty(moving);
        // Where motion is welcome there is some: else the check above would see nothing whatever was there.
        await page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        Assert.NotEmpty(await Layout.MotionsAsync(page));
    }

    private static async Task<IPage> OpenAsync(IBrowserContext context)
    {
        var page = await context.NewPageAsync();
        await page.Clock.InstallAsync(new() { TimeDate = Tour.DemoEvening });
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Second Saturday of May" }).WaitForAsync();
        return page;
    }

    // What has an identity is found by the links that lead to it.
    private static async Task<List<string>> AddressesAsync(IPage page)
    {
        var light = await LinksAsync(page, "a.spot");
        await page.WanderAsync("/bench");
        var gear = await LinksAsync(page, "a.gear");
        await page.WanderAsync("/ledger");
        var sheets = (await LinksAsync(page, "a.sheet-card")).Select(link => link.Split('/')[2]).ToList();
        var camera = gear.First(link => link.StartsWith("/bench/camera/", StringComparison.Ordinal)).Split('/')[^1];
        var paper = gear.First(link => link.StartsWith("/bench/paper/", StringComparison.Ordinal));
        return
        [
            .. Fixed, light[0], .. gear.GroupBy(link => link.Split('/')[2]).Select(kind => kind.First()),
            .. new[] { "hole", "chamber", "marks", "mask" }.Select(page => $"/bench/{page}/{camera}"), $"{paper}/strip", $"{paper}/strips",
            .. Steps.Select(step => $"/sheet/{sheets[0]}/{step}"), $"/sheet/{sheets[^1]}/judge", $"/ledger/card/{sheets[^1]}",
        ];
    }

    private static async Task<IReadOnlyList<string>> LinksAsync(IPage page, string selector)
    {
        await page.Locator(selector).First.WaitForAsync();
        return await page.Locator(selector).EvaluateAllAsync<string[]>("links => links.map(link => '/' + link.getAttribute('href'))");
    }
}
