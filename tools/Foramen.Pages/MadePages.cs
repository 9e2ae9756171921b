using Foramen.Pages.Checks;
using Foramen.Pages.Contrast;
using Foramen.Pages.Speed;

namespace Foramen.Pages;

/// <summary>The pages of docs/ that are made of other files.</summary>
public static class MadePages
{
    public static IReadOnlyList<string> Names { get; } = ["checks", "contrast", "speed", "guide"];

    /// <summary>Where a page is kept.</summary>
    public static string File(string root, string name) => Path.Combine(root, "docs", name == "guide" ? Path.Combine("guide", "README.md") : name + ".md");

    /// <summary>What the page should hold now.</summary>
    /// <exception cref="PageException">Something it is made of cannot be used.</exception>
    public static string Write(string root, string name) => name switch
    {
        "checks" => ChecksPage.Write(TestReader.ReadAll(root), References.Read(Path.Combine(root, "docs", "references.bib"))),
        "contrast" => ContrastPage.Write(System.IO.File.ReadAllText(Path.Combine(root, "src", "Foramen.Field", "wwwroot", "css", "app.css"))),
        "speed" => SpeedPage.Write(MarkRegister.Read(Path.Combine(root, "bench", "marks.md")), MarkResults.ReadAll(Path.Combine(root, "bench", "results"))),
        "guide" => GuidePage.Write(Path.Combine(root, "docs", "guide")),
        _ => throw new PageException($"There is no page {name}; pages are {string.Join(" and ", Names)}."),
    };
}
