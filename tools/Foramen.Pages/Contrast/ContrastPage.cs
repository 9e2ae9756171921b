using System.Globalization;
using System.Text;

namespace Foramen.Pages.Contrast;

/// <summary>docs/contrast.md: what every pair of colours has in every theme.</summary>
public static class ContrastPage
{
    /// <summary>The page.</summary>
    /// <param name="css">The text of app.css.</param>
    /// <exception cref="PageException">A colour is missing or none.</exception>
    public static string Write(string css)
    {
        var themes = ThemeColours.Read(css);
        var text = new StringBuilder();
        void Line(string line = "") => text.Append(line).Append('\n');
        Line("# Contrast");
        Line();
        Line("Contrast ratios by the formula of WCAG 2.2, computed from the colours of `src/Foramen.Field/wwwroot/css/app.css` for the pairs listed in");
        Line("`tools/Foramen.Pages/Contrast/ColourPairs.cs`. Made by `tools/pages contrast`; do not edit it. Tests hold that text has 7:1 or better at any size (criterion");
        Line("1.4.6, AAA), that shapes which say something have 3:1 or better (1.4.11), and that no style lays on each other what is not listed. Ratios are");
        Line("rounded down. Left out: hairlines between things that are told apart by their words, photographs themselves, and the screen's own");
        Line("brightness: what the sun leaves of a ratio is less than what stands here.");
        foreach (var (heading, isText) in new[] { ("Text", true), ("Shapes", false) })
        {
            var pairs = ColourPairs.All.Where(pair => pair.IsText == isText).ToList();
            Line();
            Line($"## {heading}: {pairs[0].Least.ToString(CultureInfo.InvariantCulture)}:1 or better");
            Line();
            Line($"| colour | on | where | {string.Join(" | ", themes.Select(theme => theme.Theme))} |");
            Line($"| --- | --- | --- | {string.Join(" | ", themes.Select(_ => "---:"))} |");
            foreach (var pair in pairs)
            {
                Line($"| {pair.Over} | {pair.Under} | {pair.Where} | {string.Join(" | ", themes.Select(theme => pair.IsIn(theme.Theme) ? Show(pair.In(theme.Colours)) : "–"))} |");
            }

            Line($"| **least** | | | {string.Join(" | ", themes.Select(theme => $"**{Show(pairs.Where(pair => pair.IsIn(theme.Theme)).Min(pair => pair.In(theme.Colours)))}**"))} |");
        }

        return text.ToString();
    }

    private static string Show(double ratio) => (Math.Floor(ratio * 100) / 100).ToString("0.00", CultureInfo.InvariantCulture);
}
