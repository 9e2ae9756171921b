using System.Text.RegularExpressions;

namespace Foramen.Pages.Checks;

/// <summary>
/// Reads test files as text: summaries, comments, rows and sources stand in them and nowhere else. It relies on the layout that the formatter holds: a class at the
/// margin, its tests four spaces in, an attribute a line.
/// </summary>
public static partial class TestReader
{
    /// <summary>Every file of tests that cites a source or lies in a PublishedValues folder, in order of path.</summary>
    public static IReadOnlyList<CheckedClass> ReadAll(string root) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(root, "tests"), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(root, file).Replace('\\', '/'))
            .Where(path => !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("/bin/", StringComparison.Ordinal) && !path.StartsWith("tests/TestKit/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => Read(path, File.ReadAllLines(Path.Combine(root, path))))
            .Where(one => one.Tests.Count > 0 && (one.IsPublishedValues || one.Tests.Any(test => test.Sources.Count > 0))),
    ];

    /// <summary>One file.</summary>
    public static CheckedClass Read(string path, IReadOnlyList<string> lines)
    {
        var tests = new List<CheckedTest>();
        var summary = string.Empty;
        IReadOnlyList<CitedSource> ofClass = [];
        var (said, attributes) = (new List<string>(), new List<string>());
        foreach (var line in lines)
        {
            var text = line.Trim();
            if (text.StartsWith("//", StringComparison.Ordinal))
            {
                said.Add(Plain(text.TrimStart('/').Trim()));
                continue;
            }

            if (text.StartsWith('['))
            {
                attributes.Add(text);
                continue;
            }

            if (TypeLine().IsMatch(line))
            {
                (summary, ofClass) = (Joined(said), Sources(attributes));
            }
            else if (MethodLine().Match(line) is { Success: true } method && attributes.Exists(one => one is "[Fact]" or "[Theory]"))
            {
                var own = Sources(attributes);
                var rule = attributes.Contains("[OwnRule]");
                tests.Add(new CheckedTest(method.Groups[1].Value, Joined(said), Rows(attributes), rule ? [] : own.Count > 0 ? own : ofClass, rule));
            }

            said.Clear();
            attributes.Clear();
        }

        return new CheckedClass(path, summary, tests);
    }

    private static List<CitedSource> Sources(List<string> attributes) =>
    [
        .. attributes.Where(one => one.StartsWith("[Source(", StringComparison.Ordinal)).Select(one => SourceLine().Match(one) is { Success: true } match
            ? new CitedSource(match.Groups[1].Value, match.Groups[2].Value, match.Groups[3].Success ? match.Groups[3].Value : "Printed")
            : throw new PageException($"{one} is not understood. Write [Source(\"key\", \"where\", Basis.Memory)] on one line; the last two may be left out.")),
    ];

    private static List<string> Rows(List<string> attributes) =>
        [.. attributes.Select(one => RowLine().Match(one)).Where(match => match.Success).Select(match => match.Groups[1].Value)];

    private static string Joined(List<string> said) => string.Join(' ', said.Where(line => line.Length > 0)).Trim();

    private static string Plain(string comment) => Tag().Replace(comment.Replace("<i>", "*", StringComparison.Ordinal).Replace("</i>", "*", StringComparison.Ordinal), string.Empty);

    [GeneratedRegex(@"^(public|internal) (static |sealed |partial |abstract )*class ")]
    private static partial Regex TypeLine();

    [GeneratedRegex(@"^    public (?:async )?(?:void|Task) (\w+)\(")]
    private static partial Regex MethodLine();

    [GeneratedRegex("""^\[Source\("([^"]+)"(?:, "([^"]*)")?(?:, Basis\.(Printed|Worked|Memory|Library))?\)\]$""")]
    private static partial Regex SourceLine();

    [GeneratedRegex(@"^\[InlineData\((.*)\)\]")]
    private static partial Regex RowLine();

    [GeneratedRegex(@"</?(summary|remarks|c|see)[^>]*>")]
    private static partial Regex Tag();
}
