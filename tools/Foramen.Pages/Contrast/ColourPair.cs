using System.Globalization;
using System.Text.RegularExpressions;

namespace Foramen.Pages.Contrast;

/// <summary>One colour that lies on another somewhere in the app.</summary>
/// <param name="Over">What must be seen: a token, or a colour ("#fff").</param>
/// <param name="Under">What it lies on: a token, a colour, or a thinned token on another ("light 45% on card").</param>
/// <param name="Where">Where it is met.</param>
/// <param name="IsText">Letters and numerals; else a shape that says something.</param>
/// <param name="Themes">In which themes, where not in all.</param>
public sealed partial record ColourPair(string Over, string Under, string Where, bool IsText, params string[] Themes)
{
    /// <summary>What the project asks: for text WCAG's enhanced 7:1 (criterion 1.4.6) whatever its size; for shapes 3:1 (1.4.11).</summary>
    public double Least => IsText ? 7 : 3;

    /// <summary>Whether a theme shows it.</summary>
    public bool IsIn(string theme) => Themes.Length == 0 || Themes.Contains(theme);

    /// <summary>Its contrast ratio, 1 to 21.</summary>
    /// <exception cref="PageException">A token that the theme does not have.</exception>
    public double In(IReadOnlyDictionary<string, ScreenColour> colours)
    {
        var ground = Thinned().Match(Under) is { Success: true } thinned
            ? Colour(thinned.Groups[1].Value, colours).Over(Colour(thinned.Groups[3].Value, colours), double.Parse(thinned.Groups[2].Value, CultureInfo.InvariantCulture) / 100)
            : Colour(Under, colours);
        return Colour(Over, colours).ContrastWith(ground);
    }

    private static ScreenColour Colour(string name, IReadOnlyDictionary<string, ScreenColour> colours)
        => name.StartsWith('#') ? ScreenColour.Parse(name)
            : colours.TryGetValue(name, out var colour) ? colour : throw new PageException($"app.css has no colour {name}.");

    [GeneratedRegex(@"^(\S+) (\d+)% on (\S+)$")]
    private static partial Regex Thinned();
}
