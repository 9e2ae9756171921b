using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;

namespace Foramen.Bench;

/// <summary>
/// The rows that every bench writes at the end of its result, one a measurement, in the one format that docs/speed.md is composed from. Linked into each bench. What
/// must be reached stands in bench/marks.md, not here.
/// </summary>
internal sealed class MarkRows
{
    private readonly List<string> rows = [];

    private readonly string where;

    /// <param name="machine">What it ran on: processor and run-time, or browser.</param>
    /// <param name="load">How busy that was; null where it does not matter.</param>
    public MarkRows(string machine, string? load)
        => where = string.Create(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd} | {machine}{(load is null ? string.Empty : $", load average {load}")} |");

    /// <summary>Processor, threads and run-time.</summary>
    public static string Machine
    {
        get
        {
            const string Facts = "/proc/cpuinfo";
            var line = File.Exists(Facts) ? File.ReadLines(Facts).FirstOrDefault(one => one.StartsWith("model name", StringComparison.Ordinal)) : null;
            var processor = line?.Split(':')[1].Trim() ?? RuntimeInformation.ProcessArchitecture.ToString();
            return string.Create(CultureInfo.InvariantCulture, $"{processor}, {Environment.ProcessorCount} threads, .NET {Environment.Version}");
        }
    }

    /// <summary>The system's load average over the last minute, as it prints it.</summary>
    public static string Load
    {
        get
        {
            const string Facts = "/proc/loadavg";
            return File.Exists(Facts) ? File.ReadAllText(Facts).Split(' ')[0] : "unknown";
        }
    }

    /// <summary>Adds a measurement.</summary>
    /// <param name="mark">Its id in bench/marks.md.</param>
    /// <param name="measured">On what, in words.</param>
    /// <param name="ours">Our own figure with its unit, and</param>
    /// <param name="against">the peer's; both empty where <paramref name="figure"/> says all.</param>
    /// <param name="figure">What the limit speaks of, in the limit's unit.</param>
    public void Add(string mark, FormattableString measured, FormattableString ours, FormattableString against, FormattableString figure)
    {
        string Cell(FormattableString text) => text.Format.Length == 0 ? " " : $" {text.ToString(CultureInfo.InvariantCulture)} ";
        rows.Add($"| {mark} |{Cell(measured)}|{Cell(ours)}|{Cell(against)}|{Cell(figure)}| {where}");
    }

    /// <summary>The end of the result.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append("\n## Marks\n\n| mark | measured | ours | against | figure | date | machine |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        rows.ForEach(row => text.Append(row).Append('\n'));
        return text.ToString();
    }
}
