namespace Foramen.Pages.Checks;

/// <summary>A file of tests that cite sources.</summary>
/// <param name="Path">From the repository's root, with forward slashes.</param>
/// <param name="Summary">Of its class.</param>
/// <param name="Tests">All tests of it.</param>
public sealed record CheckedClass(string Path, string Summary, IReadOnlyList<CheckedTest> Tests)
{
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>Where it stands: the project's short name and its folders, without the one that only says what the tests are.</summary>
    public string Place => string.Join(" / ", System.IO.Path.GetDirectoryName(Path)!.Replace('\\', '/').Split('/').Skip(1)
        .Where(part => part != "PublishedValues").Select(part => part.Replace("Foramen.", string.Empty, StringComparison.Ordinal).Replace(".Tests", string.Empty, StringComparison.Ordinal)));

    /// <summary>Whether it keeps published values only.</summary>
    public bool IsPublishedValues => Path.Contains("/PublishedValues/", StringComparison.Ordinal);
}
