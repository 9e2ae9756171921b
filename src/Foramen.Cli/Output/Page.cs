using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Spectre.Console;

namespace Foramen.Cli.Output;

/// <summary>Where a verb writes: words and tables for people, or one JSON document. Notes and progress go to the error stream, so that JSON stays clean.</summary>
internal sealed class Page(TextWriter output, TextWriter errors)
{
    /// <summary>A table may run past a narrow window rather than break its words.</summary>
    private const int WidestTable = 160;

    private readonly IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
    {
        Out = new AnsiConsoleOutput(output),
        Ansi = ReferenceEquals(output, Console.Out) ? AnsiSupport.Detect : AnsiSupport.No,
        Interactive = InteractionSupport.No,
    });

    /// <summary>How every verb ends: its report as one indented JSON document where that was asked for, in words otherwise. The exit code: 0.</summary>
    public int Show<T>(bool json, T report, JsonTypeInfo<T> type, Action words)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(report, type));
        }
        else
        {
            words();
        }

        return 0;
    }

    /// <summary>Writes a line of plain text.</summary>
    public void Line(string text = "") => output.WriteLine(text);

    /// <summary>Writes a table whose first column is words and whose others are numbers.</summary>
    public void Table(IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table().Border(TableBorder.None);
        table.ShowHeaders = headings.Any(heading => heading.Length > 0);
        for (var i = 0; i < headings.Count; i++)
        {
            var column = new TableColumn(new Text(headings[i])) { NoWrap = true, Padding = new Padding(0, 0, 2, 0) };
            table.AddColumn(i == 0 || !table.ShowHeaders ? column : column.RightAligned());
        }

        foreach (var row in rows)
        {
            table.AddRow([.. row.Select(cell => new Text(cell))]);
        }

        console.Profile.Width = Math.Max(console.Profile.Width, WidestTable);
        console.Write(table);
    }

    /// <summary>A note beside the result: an assumption, a doubt, a caution.</summary>
    public void Note(string text) => errors.WriteLine("note: " + text);

    /// <summary>Shows on the error stream how far long work is, at most one line for each tenth, and nothing for the first second.</summary>
    public IProgress<double> Progress(string what) => new LineProgress(errors, what);
}
