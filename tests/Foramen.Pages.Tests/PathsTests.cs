using System.Text.RegularExpressions;

namespace Foramen.Pages.Tests;

/// <summary>What the documents point to is there, so that nobody is sent to a door that has moved.</summary>
public partial class PathsTests
{
    private static readonly string[] Roots = ["src/", "tests/", "docs/", "bench/", "demo/", "tools/"];

    public static TheoryData<string> Documents =>
    [
        .. new[] { "README.md", "CHANGELOG.md", "bench/marks.md" }
            .Concat(Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(Repository.Root, file)).Order(StringComparer.Ordinal)),
    ];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_link_leads_somewhere(string document)
    {
        var folder = Path.GetDirectoryName(Path.Combine(Repository.Root, document))!;
        var text = File.ReadAllText(Path.Combine(Repository.Root, document));
        var missing = Links(text).Where(link => !Exists(Path.Combine(folder, link))).ToList();
        Assert.Empty(missing);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_path_named_exists(string document)
    {
        var missing = Paths(File.ReadAllText(Path.Combine(Repository.Root, document))).Where(path => !Exists(Path.Combine(Repository.Root, path))).ToList();
        Assert.Empty(missing);
    }

    [Theory]
    [InlineData("see [a](b.md#part) and ![c](d.jpg)", "b.md,d.jpg")]
    [InlineData("[out](https://example.org/x) [here](#there)", "")]
    public void Links_are_found(string text, string expected) => Assert.Equal(expected, string.Join(',', Links(text)));

    [Theory]
    [InlineData("`src/A.cs` and `docs/b c`, but `x/y`", "src/A.cs,docs/b")]
    [InlineData("`tests/…` `src/*/bin` `tests/X/bin/Release/net10.0/X.dll` (`bench/results/<name>.md`)", "")]
    public void Paths_are_found(string text, string expected) => Assert.Equal(expected, string.Join(',', Paths(text)));

    // A part of a page (#…) is not looked for, and what lies on the web is not ours to check.
    private static IEnumerable<string> Links(string text) => Link().Matches(text)
        .Select(match => match.Groups[1].Value.Split('#')[0]).Where(link => link.Length > 0 && !link.Contains("://", StringComparison.Ordinal));

    // Patterns and what a build makes are not files of the repository.
    private static IEnumerable<string> Paths(string text) => Code().Matches(text)
        .Select(match => match.Groups[1].Value.Split(' ')[0].TrimEnd('.', ',', ';'))
        .Where(path => Array.Exists(Roots, root => path.StartsWith(root, StringComparison.Ordinal)) && path.IndexOfAny(['…', '*', '<', '{', '$']) < 0)
        .Where(path => !path.Contains("/bin/", StringComparison.Ordinal) && !path.Contains("/obj/", StringComparison.Ordinal));

    private static bool Exists(string path) => File.Exists(path) || Directory.Exists(path);

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex Code();
}
