using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>
/// axe-core, with the enhanced contrast of 7:1 (WCAG 2.2, criterion 1.4.6) and the size of targets. It runs in the page itself: the package's own way over a
/// second page is for pages with frames, and takes a second each time.
/// </summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>What it finds on the page as it stands, in sentences.</summary>
    /// <param name="page">The page.</param>
    /// <param name="where">Its name.</param>
    /// <param name="coloursOnly">Only what another theme can change.</param>
    public static async Task<IReadOnlyList<string>> FindAsync(IPage page, string where, bool coloursOnly = false)
    {
        if (await page.EvaluateAsync<bool>("() => typeof axe === 'undefined'"))
        {
            await page.EvaluateAsync(Script + "\n;0");
        }

        return [.. (await page.EvaluateAsync<string[]>(
            """
            async coloursOnly => {
              if (document.querySelector('iframe, frame')) throw new Error('A frame would not be looked into.');
              const found = await axe.run(document, coloursOnly
                ? { resultTypes: ['violations'], runOnly: { type: 'rule', values: ['color-contrast', 'color-contrast-enhanced'] } }
                : { resultTypes: ['violations'], rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } } });
              return found.violations.map(one => `${one.id}: ${one.help}: ${one.nodes.slice(0, 4).map(node => node.html).join(' | ')}`);
            }
            """,
            coloursOnly)).Select(one => $"{where}: {one}")];
    }
}
