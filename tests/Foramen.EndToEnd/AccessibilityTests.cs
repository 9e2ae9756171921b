using Foramen.EndToEnd.Stage;
using Microsoft.Playwright;

namespace Foramen.EndToEnd;

/// <summary>axe-core, with the enhanced contrast of 7:1 (WCAG 2.2, criterion 1.4.6), on every place of an empty journal in every theme.</summary>
public sealed class AccessibilityTests(FieldStage stage)
{
    private static readonly string[] Addresses = ["/", "/sheet", "/sheet/new", "/bench", "/bench/camera", "/bench/paper", "/ledger", "/settings", "/gallery"];

    [Fact]
    public async Task Axe_finds_nothing_on_the_phone_in_any_theme()
    {
        await using var context = await stage.PhoneAsync();
        await CheckAsync(context);
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_large_screen_in_any_theme()
    {
        await using var context = await stage.DesktopAsync();
        await CheckAsync(context);
    }

    /// <summary>The form that a scanned square opens: Home met from elsewhere, as through a proxy.</summary>
    [Fact]
    public async Task Axe_finds_nothing_on_the_pairing_form_in_any_theme()
    {
        var data = Directory.CreateTempSubdirectory("foramen-pairing-").FullName;
        using var home = await HomeProcess.StartAsync(null, data, "--address", "https://home.example/");
        await using var context = await stage.PhoneAsync(home.Address);
        await context.SetExtraHTTPHeadersAsync(new Dictionary<string, string> { ["X-Forwarded-For"] = "203.0.113.5" });
        var page = await context.NewPageAsync();
        await page.OpenAsync("/settings#pair=ABCDE12345");
        await Assertions.Expect(page.Locator("#home-code")).ToHaveValueAsync("ABCDE12345");
        foreach (var theme in new[] { "paper", "night", "red" })
        {
            await page.ThemeAsync(theme);
            Assert.Empty(await Axe.FindAsync(page, $"the pairing form in {theme}", coloursOnly: theme != "paper"));
        }

        Directory.Delete(data, recursive: true);
    }

    /// <summary>WCAG asks 44 px (2.5.5); wet and gloved hands get 48.</summary>
    [Fact]
    public async Task Every_target_is_large_enough_for_a_wet_thumb()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        await page.OpenAsync("/");
        foreach (var address in Addresses)
        {
            await page.WanderAsync(address);
            var small = await page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll('a, button, input, summary, label.btn, label.check')]
                  .filter(e => !e.closest('.skip') && !e.classList.contains('skip') && !e.classList.contains('unseen') && e.type !== 'checkbox')
                  .map(e => ({ e, b: e.getBoundingClientRect() }))
                  .filter(({ b }) => b.width > 0 && (b.height < 47.5 || b.width < 47.5))
                  .map(({ e, b }) => `${e.tagName} ${e.className} ${(e.textContent ?? '').trim().slice(0, 30)} ${Math.round(b.width)}x${Math.round(b.height)}`)
                """);
            Assert.True(small.Length == 0, $"{address}: {string.Join("; ", small)}");
        }
    }

    [Fact]
    public async Task Nothing_is_asked_of_anyone_else_and_nothing_is_blocked()
    {
        await using var context = await stage.PhoneAsync();
        var page = await context.NewPageAsync();
        var foreign = new List<string>();
        var errors = new List<string>();
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(stage.Home.Address, StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
            {
                foreign.Add(request.Url);
            }
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                errors.Add(message.Text);
            }
        };
        // Each loaded by itself: what a page asks for at its start is what could be blocked.
        foreach (var address in Addresses)
        {
            await page.OpenAsync(address);
        }

        Assert.Empty(foreign);
        Assert.Empty(errors);
    }

    // Everything in the first theme; what another theme can change in the others.
    private static async Task CheckAsync(IBrowserContext context)
    {
        var page = await context.NewPageAsync();
        await page.OpenAsync("/");
        foreach (var address in Addresses)
        {
            await page.WanderAsync(address);
            foreach (var theme in new[] { "paper", "night", "red" })
            {
                await page.ThemeAsync(theme);
                Assert.Empty(await Axe.FindAsync(page, $"{address} in {theme}", coloursOnly: theme != "paper"));
            }
        }
    }
}
