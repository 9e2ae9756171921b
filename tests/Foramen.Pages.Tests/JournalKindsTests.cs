using System.Text.RegularExpressions;

namespace Foramen.Pages.Tests;

/// <summary>docs/journal-format.md explains every kind of entry, and no other.</summary>
public partial class JournalKindsTests
{
    [Fact]
    public void Every_kind_is_explained_and_every_kind_explained_is_one()
    {
        var known = Kind().Matches(Text("src", "Foramen.Journal", "Bodies", "EntryKind.cs")).Select(match => match.Groups[1].Value).ToList();
        Assert.NotEmpty(known);
        var rows = Text("docs", "journal-format.md").Split("\n## ").Single(section => section.StartsWith("Kinds", StringComparison.Ordinal)).Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal));
        Assert.Equal(known.Order(StringComparer.Ordinal), rows.SelectMany(row => Name().Matches(row.Split('|')[1]).Select(match => match.Groups[1].Value)).Order(StringComparer.Ordinal));
    }

    private static string Text(params string[] path) => File.ReadAllText(Path.Combine([Repository.Root, .. path]));

    [GeneratedRegex("const string \\w+ = \"([a-zA-Z.]+)\"")]
    private static partial Regex Kind();

    [GeneratedRegex("`([a-zA-Z.]+)`")]
    private static partial Regex Name();
}
