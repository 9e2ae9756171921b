using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Pages.Contrast;

namespace Foramen.Pages.Tests.Contrast;

/// <summary>What the app's colours must have, and that the list of pairs is whole.</summary>
public partial class ContrastTests
{
    private static readonly string Field = Path.Combine(Repository.Root, "src", "Foramen.Field");

    private static readonly IReadOnlyList<(string Theme, IReadOnlyDictionary<string, ScreenColour> Colours)> Themes
        = ThemeColours.Read(File.ReadAllText(Path.Combine(Field, "wwwroot", "css", "app.css")));

    [Fact]
    public void There_are_three_themes() => Assert.Equal(["paper", "night", "red"], Themes.Select(theme => theme.Theme));

    [Fact]
    public void Every_pair_can_be_seen_in_every_theme()
        => Assert.Empty(
            from theme in Themes
            from pair in ColourPairs.All
            where pair.IsIn(theme.Theme) && pair.In(theme.Colours) < pair.Least
            select string.Create(CultureInfo.InvariantCulture, $"{theme.Theme}: {pair.Over} on {pair.Under} ({pair.Where}) has {pair.In(theme.Colours):0.00}, not {pair.Least}"));

    /// <summary>A rule that sets both the ink and its ground sets a pair.</summary>
    [Fact]
    public void Every_pair_that_a_rule_sets_is_listed()
    {
        var set = Rules().SelectMany(rule => Declared(rule.Body, "color").SelectMany(ink => Declared(rule.Body, "background").Select(ground => (ink, ground, rule.File)))).ToList();
        Assert.NotEmpty(set);
        Assert.DoesNotContain(set, pair => !ColourPairs.All.Any(listed => listed.IsText && listed.Over == pair.ink && listed.Under == pair.ground));
    }

    [Fact]
    public void Every_colour_that_draws_something_is_listed()
    {
        var drawn = Rules().SelectMany(rule => new[] { "color", "fill", "stroke", "border", "border-color", "outline" }
            .SelectMany(property => Declared(rule.Body, property)).Select(colour => (colour, rule.File))).Distinct().ToList();
        Assert.NotEmpty(drawn);
        var listed = ColourPairs.All.SelectMany(pair => pair.Over.Split(' ').Concat(pair.Under.Split(' '))).Concat(ColourPairs.Silent).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(drawn, one => !listed.Contains(one.colour));
    }

    [Fact]
    public void No_token_is_left_over()
    {
        var used = Token().Matches(string.Concat(Rules().Select(rule => rule.Body))).Select(match => match.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(Themes[0].Colours.Keys, token => !used.Contains(token));
    }

    [Fact]
    public void A_colour_laid_thinly_shows_its_ground()
        => Assert.Equal(new ScreenColour(128, 64, 0), new ScreenColour(255, 128, 0).Over(new ScreenColour(0, 0, 0), 0.5));

    [Theory]
    [InlineData("red")]
    [InlineData("#12345")]
    public void What_is_no_colour_is_refused(string text) => Assert.Throws<PageException>(() => ScreenColour.Parse(text));

    [Fact]
    public void A_token_that_is_not_there_is_refused()
        => Assert.Throws<PageException>(() => new ColourPair("nothing", "paper", "nowhere", IsText: true).In(Themes[0].Colours));

    // Rules for paper (print) are left out: ink on white.
    private static List<(string File, string Body)> Rules()
        => [.. Directory.EnumerateFiles(Field, "*.css", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .SelectMany(file => Rule().Matches(Print().Replace(Comment().Replace(File.ReadAllText(file), ""), ""))
                .Where(rule => !rule.Groups[1].Value.TrimStart().StartsWith(":root", StringComparison.Ordinal) || !rule.Groups[2].Value.Contains("--paper:", StringComparison.Ordinal))
                .Select(rule => (Path.GetFileName(file), rule.Groups[2].Value)))];

    private static IEnumerable<string> Declared(string body, string property)
        => Regex.Matches(body, $@"(?<![\w-]){property}\s*:\s*([^;]+);?").SelectMany(found => Colour().Matches(found.Groups[1].Value)).Select(found => found.Groups[1].Success ? found.Groups[1].Value : found.Value);

    [GeneratedRegex(@"([^{}]+)\{([^{}]*)\}")]
    private static partial Regex Rule();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"@media print \{(?:[^{}]*\{[^{}]*\})*\s*\}")]
    private static partial Regex Print();

    [GeneratedRegex(@"var\(--([\w-]+)\)|#[0-9a-fA-F]{3,6}\b")]
    private static partial Regex Colour();

    [GeneratedRegex(@"var\(--([\w-]+)\)")]
    private static partial Regex Token();
}
