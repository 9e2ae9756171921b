using Foramen.Pages.Checks;

namespace Foramen.Pages.Tests.Checks;

/// <summary>Every published value has a source that the register knows.</summary>
public class SourcesTests
{
    private static readonly IReadOnlyList<CheckedClass> Classes = TestReader.ReadAll(Repository.Root);

    private static readonly IReadOnlyDictionary<string, Reference> Register = References.Read(Path.Combine(Repository.Root, "docs", "references.bib"));

    [Fact]
    public void Every_test_of_published_values_names_its_source()
        => Assert.Empty(Classes.Where(one => one.IsPublishedValues)
            .SelectMany(one => one.Tests.Where(test => test.Sources.Count == 0 && !test.IsOwnRule).Select(test => $"{one.Path}: {test.Name} wants [Source(\"key of docs/references.bib\")] or [OwnRule]")));

    // A file whose tests the reader cannot see would pass unnoticed.
    [Fact]
    public void The_reader_sees_every_test_of_those_files()
        => Assert.Empty(Classes.Where(one => one.Tests.Count != File.ReadLines(Path.Combine(Repository.Root, one.Path)).Count(line => line.Trim() is "[Fact]" or "[Theory]")).Select(one => one.Path));

    [Fact]
    public void Every_folder_of_published_values_is_seen()
        => Assert.Equal(
            Directory.EnumerateDirectories(Path.Combine(Repository.Root, "tests"), "PublishedValues", SearchOption.AllDirectories)
                .Select(folder => Path.GetRelativePath(Repository.Root, folder).Replace('\\', '/')).Where(folder => !folder.Contains("/obj/", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
            Classes.Where(one => one.IsPublishedValues).Select(one => Path.GetDirectoryName(one.Path)!.Replace('\\', '/')).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_key_has_an_entry_and_every_entry_a_test()
        => Assert.Equal(Register.Keys, Classes.SelectMany(one => one.Tests).SelectMany(test => test.Sources).Select(source => source.Key).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void What_is_said_from_memory_or_practice_says_so_in_the_map()
    {
        var read = TestReader.Read("tests/A.Tests/PublishedValues/BTests.cs",
        [
            "/// <summary>A <i>book</i>.</summary>",
            "[Source(\"x\", \"table 1\", Basis.Memory)]",
            "public sealed class BTests",
            "{",
            "    // Two is two.",
            "    [Theory]",
            "    [InlineData(2, 2)]",
            "    public void Two_is_two(int a, int b)",
            "",
            "    [Fact]",
            "    [Source(\"common-practice\")]",
            "    public async Task Everybody_does_it()",
            "",
            "    [Fact]",
            "    [OwnRule]",
            "    public void Three_is_refused()",
        ]);
        var register = new Dictionary<string, Reference> { ["x"] = new("x", new Dictionary<string, string> { ["title"] = "X" }), ["common-practice"] = new("common-practice", new Dictionary<string, string>()) };
        var page = ChecksPage.Write([read], register);
        Assert.Contains("| Two is two | Two is two. (2, 2) | x, table 1 | **from memory** |", page, StringComparison.Ordinal);
        Assert.Contains("| Everybody does it | in the test | common-practice | **common practice, no source** |", page, StringComparison.Ordinal);
        Assert.Contains("A *book*.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Three is refused", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_source_that_is_not_understood_is_refused()
        => Assert.Throws<PageException>(() => TestReader.Read("tests/A.cs", ["[Source(nameof(X))]", "public class A"]));
}
