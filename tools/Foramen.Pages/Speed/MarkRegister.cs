namespace Foramen.Pages.Speed;

/// <summary>bench/marks.md: everything that must be reached, in order, under headings.</summary>
public static class MarkRegister
{
    /// <summary>The headings with their marks.</summary>
    /// <exception cref="PageException">A mark that stands twice.</exception>
    public static IReadOnlyList<(string Heading, IReadOnlyList<Mark> Marks)> Read(string file)
    {
        var found = new List<(string, IReadOnlyList<Mark>)>();
        var marks = new List<Mark>();
        foreach (var line in File.ReadLines(file))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                marks = [];
                found.Add((line[3..], marks));
            }
            else if (MarkResults.Cells(line) is [var id, var what, var mustBe, var by] && id != "mark")
            {
                marks.Add(new Mark(id, what, mustBe, by));
            }
        }

        var twice = found.SelectMany(group => group.Item2).GroupBy(mark => mark.Id).FirstOrDefault(group => group.Count() > 1);
        return twice is null ? found : throw new PageException($"{file} has the mark {twice.Key} twice.");
    }
}
