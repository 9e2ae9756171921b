namespace Foramen.Pages;

/// <summary>An entry of docs/references.bib.</summary>
/// <param name="Key">By which tests cite it.</param>
/// <param name="Fields">author, title, year and so on, as written.</param>
public sealed record Reference(string Key, IReadOnlyDictionary<string, string> Fields)
{
    private static readonly string[] Order = ["author", "title", "booktitle", "journal", "volume", "pages", "institution", "publisher", "edition", "number", "year", "doi", "note"];

    /// <summary>The reference as one line of text.</summary>
    public string Text => string.Join(", ", Order.Where(Fields.ContainsKey)
        .Select(name => name == "title" ? $"*{Fields[name]}*" : Fields[name])) + ".";
}
