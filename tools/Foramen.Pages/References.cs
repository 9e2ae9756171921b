using System.Text.RegularExpressions;

namespace Foramen.Pages;

/// <summary>The register of sources, docs/references.bib: BibTeX, one field a line, braces around every value.</summary>
public static partial class References
{
    /// <summary>All entries by key.</summary>
    /// <exception cref="PageException">A line that is not understood, or a key twice.</exception>
    public static IReadOnlyDictionary<string, Reference> Read(string file)
    {
        var found = new SortedDictionary<string, Reference>(StringComparer.Ordinal);
        (string Key, Dictionary<string, string> Fields)? open = null;
        var number = 0;
        foreach (var line in File.ReadLines(file))
        {
            number++;
            if (line.Length == 0 || line.StartsWith('%'))
            {
                continue;
            }

            if (Start().Match(line) is { Success: true } start && open is null)
            {
                open = (start.Groups[1].Value, []);
            }
            else if (open is { } entry && line == "}")
            {
                if (!found.TryAdd(entry.Key, new Reference(entry.Key, entry.Fields)))
                {
                    throw new PageException($"{file}, line {number}: the key {entry.Key} stands twice.");
                }

                open = null;
            }
            else if (open is { } here && Field().Match(line) is { Success: true } field)
            {
                here.Fields[field.Groups[1].Value] = field.Groups[2].Value;
            }
            else
            {
                throw new PageException($"{file}, line {number}: not understood. Write entries as @kind{{key,  then  name = {{value}},  then  }}.");
            }
        }

        return found;
    }

    [GeneratedRegex(@"^@\w+\{([a-z0-9.-]+),$")]
    private static partial Regex Start();

    [GeneratedRegex(@"^  (\w+) = \{(.+)\},$")]
    private static partial Regex Field();
}
