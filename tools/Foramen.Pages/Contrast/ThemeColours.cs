using System.Text.RegularExpressions;

namespace Foramen.Pages.Contrast;

/// <summary>The colours of the themes, read from the design system's tokens.</summary>
public static partial class ThemeColours
{
    /// <summary>Tokens and their colours by theme, the first theme first; a theme has what the first has where it says nothing.</summary>
    /// <param name="css">The text of app.css.</param>
    /// <exception cref="PageException">No theme is found, or a colour is none.</exception>
    public static IReadOnlyList<(string Theme, IReadOnlyDictionary<string, ScreenColour> Colours)> Read(string css)
    {
        var themes = Block().Matches(css).Select(block => (Theme: block.Groups[1].Success ? block.Groups[1].Value : "paper", Own: Tokens(block.Groups[2].Value))).ToList();
        if (themes is not [("paper", var first), ..])
        {
            throw new PageException("app.css does not begin with the tokens of :root.");
        }

        return [.. themes.Select(theme => (theme.Theme, (IReadOnlyDictionary<string, ScreenColour>)first.Concat(theme.Own).GroupBy(token => token.Key, StringComparer.Ordinal)
            .ToDictionary(token => token.Key, token => token.Last().Value, StringComparer.Ordinal)))];
    }

    private static Dictionary<string, ScreenColour> Tokens(string block)
        => Token().Matches(block).ToDictionary(token => token.Groups[1].Value, token => ScreenColour.Parse(token.Groups[2].Value), StringComparer.Ordinal);

    [GeneratedRegex("""^ *:root(?:\[data-theme="(\w+)"\])? \{\n(.*?)^ *\}""", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("""--([\w-]+): (#[0-9a-fA-F]+);""")]
    private static partial Regex Token();
}
