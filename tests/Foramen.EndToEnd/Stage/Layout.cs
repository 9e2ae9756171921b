using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>What does not fit on a page.</summary>
internal static class Layout
{
    /// <summary>Twice the browser's own text size, or once.</summary>
    public static async Task TextSizeAsync(this IPage page, bool twice)
        => await page.EvaluateAsync("size => { document.documentElement.style.fontSize = size; }", twice ? "200%" : "");

    /// <summary>Goes to an address of the app without loading it anew.</summary>
    public static async Task WanderAsync(this IPage page, string address)
    {
        await page.EvaluateAsync("address => Blazor.navigateTo(address)", address);
        await page.WaitForFunctionAsync("address => location.pathname === address && document.querySelector('h1')", address);
        // The page before is replaced within a frame or two of the address; what is read from the store comes a moment later.
        await page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 120))))");
    }

    /// <summary>What is wider than the page, and buttons, links and choices whose words do not lie within them; in sentences.</summary>
    public static async Task<IReadOnlyList<string>> MisfitsAsync(IPage page, string where)
        => [.. (await page.EvaluateAsync<string[]>(
            """
            () => {
              const found = [], root = document.documentElement, name = e => `${e.tagName.toLowerCase()}.${e.getAttribute('class') ?? ''} “${(e.textContent ?? '').trim().slice(0, 30)}”`;
              if (root.scrollWidth > root.clientWidth) {
                const wide = [...document.querySelectorAll('main *')].filter(e => e.getBoundingClientRect().right > root.clientWidth + 1).slice(-3).map(name);
                found.push(`scrolls sideways, ${root.scrollWidth} in ${root.clientWidth}: ${wide.join(', ')}`);
              }
              for (const e of document.querySelectorAll('button, .btn, .option, nav.bar a, summary, .with-unit input')) {
                const box = e.getBoundingClientRect();
                if (box.width === 0 || e.closest('.unseen')) continue;
                const words = document.createRange();
                words.selectNodeContents(e);
                const inside = words.getBoundingClientRect();
                if (inside.width > 0 && (inside.left < box.left - 2 || inside.right > box.right + 2 || inside.top < box.top - 2 || inside.bottom > box.bottom + 2)) found.push(`words stick out of ${name(e)}`);
                if (e.tagName === 'INPUT' && e.scrollWidth > e.clientWidth + 1) found.push(`a number is cut off in #${e.id}`);
              }
              return found;
            }
            """)).Select(misfit => $"{where}: {misfit}")];

    /// <summary>Animations and transitions that a style of the page would run.</summary>
    public static Task<string[]> MotionsAsync(IPage page)
        => page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('*')].filter(e => {
              const style = getComputedStyle(e);
              return style.animationName !== 'none' || style.transitionDuration.split(',').some(duration => parseFloat(duration) > 0);
            }).map(e => `${e.tagName.toLowerCase()}.${e.getAttribute('class') ?? ''}`)
            """);
}
