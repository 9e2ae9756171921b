using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>The page by the Tab key alone.</summary>
internal static class Keys
{
    private const string Mark =
        """
        () => {
          const shown = e => e.checkVisibility() && e.getClientRects().length > 0;
          const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
            .filter(e => !e.disabled && e.type !== 'hidden' && shown(e));
          all.forEach((e, i) => { e.dataset.key = e.type === 'radio' ? `radio ${e.name}` : `${i} ${e.tagName} ${e.id} ${(e.ariaLabel ?? e.textContent ?? '').trim().slice(0, 40)}`; });
          return [...new Set(all.map(e => e.dataset.key))];
        }
        """;

    // Where the focus is, and whether that can be seen: an outline on the element or on what stands for it.
    private const string Here =
        """
        () => {
          const e = document.activeElement;
          if (!e?.dataset?.key) { return ''; }
          const stands = [e, e.nextElementSibling, e.closest('label'), document.querySelector(`label[for="${e.id}"]`), e.closest('.options')].filter(Boolean);
          const seen = stands.some(one => { const look = getComputedStyle(one); return look.outlineStyle !== 'none' && parseFloat(look.outlineWidth) > 0 && !one.classList.contains('unseen'); });
          return (seen ? '+' : '-') + e.dataset.key;
        }
        """;

    /// <summary>What on the page cannot be reached by Tab, or does not show that it has been; in sentences.</summary>
    public static async Task<IReadOnlyList<string>> FindUnreachedAsync(IPage page, string where)
    {
        var expected = await page.EvaluateAsync<string[]>(Mark);
        var reached = new HashSet<string>();
        var dark = new HashSet<string>();
        for (var press = 0; press < expected.Length + 10 && reached.Count < expected.Length; press++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<string>(Here) is { Length: > 0 } here)
            {
                reached.Add(here[1..]);
                if (here[0] == '-')
                {
                    dark.Add(here[1..]);
                }
            }
        }

        return
        [
            .. expected.Where(one => !reached.Contains(one)).Select(one => $"{where}: Tab does not reach {one}"),
            .. dark.Select(one => $"{where}: no focus to be seen on {one}"),
        ];
    }

    /// <summary>Presses Tab, or Shift and Tab, until the target has the focus.</summary>
    public static async Task TabToAsync(this IPage page, ILocator target, bool back = false)
    {
        await target.WaitForAsync();
        for (var press = 0; press < 120; press++)
        {
            if (await target.EvaluateAsync<bool>("e => e === document.activeElement"))
            {
                return;
            }

            await page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        throw new InvalidOperationException($"Tab does not reach {target}.");
    }
}
