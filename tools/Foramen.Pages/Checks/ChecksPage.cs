using System.Globalization;
using System.Text;

namespace Foramen.Pages.Checks;

/// <summary>docs/checks.md: each published value, its source, its test.</summary>
public static class ChecksPage
{
    /// <summary>The page.</summary>
    /// <param name="classes">Of <see cref="TestReader"/>.</param>
    /// <param name="references">Of <see cref="References"/>.</param>
    /// <exception cref="PageException">A source that the register does not know.</exception>
    public static string Write(IReadOnlyList<CheckedClass> classes, IReadOnlyDictionary<string, Reference> references)
    {
        var tests = classes.SelectMany(one => one.Tests).Where(test => test.Sources.Count > 0).ToList();
        var text = new StringBuilder();
        void Line(string line = "") => text.Append(line).Append('\n');
        Line("# Checks against the outside");
        Line();
        Line("Each published value, its source, its test. Written by `tools/pages checks` from the tests and [references.bib](references.bib); do not edit it. A test");
        Line("fails while it is not up to date, when a file under a `PublishedValues` folder names no source, or when a key has no entry or an entry no test.");
        Line();
        Line("**How** says how the values were come by: *printed there* (they stand in the source), *worked from it* (by hand or by another program, from what the");
        Line("source states), *by that library* (which shares nothing with our code), **from memory** of a source that was not at hand (so a slip of memory is");
        Line("possible), and **common practice, no source** (what the trade does; nobody we know of has published it).");
        Line("A row of values is a test's row of arguments, as written there.");
        Line();
        Line(string.Create(CultureInfo.InvariantCulture, $"{tests.Count} tests cite {tests.SelectMany(test => test.Sources).Select(source => source.Key).Distinct().Count()} sources: {string.Join(", ", tests.SelectMany(test => test.Sources).GroupBy(source => source.How).OrderByDescending(group => group.Count()).Select(group => $"{group.Count()} × {group.Key}"))}."));
        foreach (var place in classes.GroupBy(one => one.Place))
        {
            Line();
            Line($"## {place.Key}");
            foreach (var one in place)
            {
                Line();
                Line($"### [{one.Name}](../{one.Path})");
                Line();
                if (one.Summary.Length > 0)
                {
                    Line(one.Summary);
                    Line();
                }

                Line("| test | values | source | how |");
                Line("| --- | --- | --- | --- |");
                foreach (var test in one.Tests.Where(test => test.Sources.Count > 0))
                {
                    Line($"| {test.Name.Replace('_', ' ')} | {Cell(Values(test))} | {string.Join("<br>", test.Sources.Select(source => Cited(one, source, references)))} | {string.Join("<br>", test.Sources.Select(source => source.How))} |");
                }
            }
        }

        Line();
        Line("## References");
        Line();
        foreach (var reference in references.Values)
        {
            Line($"- **{reference.Key}**: {reference.Text}");
        }

        return text.ToString();
    }

    private static string Cited(CheckedClass one, CitedSource source, IReadOnlyDictionary<string, Reference> references)
        => !references.ContainsKey(source.Key) ? throw new PageException($"{one.Path} cites {source.Key}, which docs/references.bib does not have.")
            : source.At.Length > 0 ? $"{source.Key}, {source.At}" : source.Key;

    private static string Values(CheckedTest test)
    {
        var rows = test.Rows.Count > 0 ? string.Join("; ", test.Rows.Select(row => $"({row})")) : string.Empty;
        return (test.Comment, rows) switch
        {
            ("", "") => "in the test",
            ("", _) => rows,
            (_, "") => test.Comment,
            _ => $"{test.Comment} {rows}",
        };
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);
}
