namespace Foramen.Pages.Speed;

/// <summary>The rows that each bench writes under "## Marks" at the end of its file.</summary>
public static class MarkResults
{
    private const string Heading = "## Marks";

    /// <summary>Of all files of a folder.</summary>
    /// <exception cref="PageException">A file without such rows, or a row with too few or too many cells.</exception>
    public static IReadOnlyList<MarkResult> ReadAll(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*.md").Order(StringComparer.Ordinal).SelectMany(file => Read(Path.GetFileName(file), File.ReadAllLines(file)))];

    /// <summary>Of one file.</summary>
    public static IReadOnlyList<MarkResult> Read(string name, IReadOnlyList<string> lines)
    {
        var rows = lines.SkipWhile(line => line != Heading).Skip(1).Select(Cells).Where(cells => cells is not null && cells[0] != "mark").ToList();
        return rows.Count == 0
            ? throw new PageException($"bench/results/{name} has no rows under \"{Heading}\".")
            : [.. rows.Select(cells => cells is [var mark, var measured, var ours, var against, var figure, var date, var machine] && date.Length > 0 && machine.Length > 0
                ? new MarkResult(mark, measured, ours, against, figure, date, machine, name)
                : throw new PageException($"bench/results/{name}: the row of {cells![0]} needs mark, measured, ours, against, figure, date and machine."))];
    }

    /// <summary>The cells of a table's row; null for any other line and for the rule under the head.</summary>
    internal static string[]? Cells(string line)
        => line.StartsWith("| ", StringComparison.Ordinal) && line.EndsWith('|') && !line.StartsWith("| --", StringComparison.Ordinal) ? line[1..^1].Split('|', StringSplitOptions.TrimEntries) : null;
}
