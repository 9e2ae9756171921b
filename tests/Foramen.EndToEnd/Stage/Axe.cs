using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>axe-core, with the enhanced contrast of 7:1 (WCAG 2.2, criterion 1.4.6) and the size of targets.</summary>
internal static class Axe
{
    private static readonly AxeRunOptions Options = new()
    {
        Rules = new Dictionary<string, RuleOptions> { ["color-contrast-enhanced"] = new() { Enabled = true }, ["target-size"] = new() { Enabled = true } },
    };

    private static readonly AxeRunOptions Colours = new() { RunOnly = new RunOnlyOptions { Type = "rule", Values = ["color-contrast", "color-contrast-enhanced"] } };

    /// <summary>What it finds on the page as it stands, in sentences.</summary>
    /// <param name="page">The page.</param>
    /// <param name="where">Its name.</param>
    /// <param name="coloursOnly">Only what another theme can change.</param>
    public static async Task<IReadOnlyList<string>> FindAsync(IPage page, string where, bool coloursOnly = false)
        => [.. (await page.RunAxe(coloursOnly ? Colours : Options)).Violations.Select(violation =>
            $"{where}: {violation.Id}: {violation.Help}: {string.Join(" | ", violation.Nodes.Take(4).Select(node => node.Html))}")];
}
