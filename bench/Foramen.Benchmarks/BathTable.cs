using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using BenchmarkDotNet.Reports;

namespace Foramen.Benchmarks;

/// <summary>What a bottle with a thousand sheets costs.</summary>
internal static class BathTable
{
    /// <summary>The report in Markdown.</summary>
    public static string Write(Summary bath)
    {
        var text = new StringBuilder();
        text.AppendLine("# A bottle with a thousand sheets: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {MarkRows.Machine}, {RuntimeInformation.OSDescription}.");
        text.AppendLine("Medians of one run of `bench/run bath`, load average at its end " + MarkRows.Load + ". Folded, then forecast a thousand sheets ahead.");
        text.AppendLine();
        text.AppendLine("On a busy machine the median tells of the others too; the fastest of 300 single runs is nearest to what the work takes.");
        text.AppendLine();
        text.AppendLine("| from | median | fastest run | should be |");
        text.AppendLine("| --- | --- | --- | --- |");
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        marks.Add("bath.history", $"bare events (4000), median", $"{Milliseconds(bath, nameof(BathBenchmarks.FromBareEvents)):0.00} ms", $"", $"{Milliseconds(bath, nameof(BathBenchmarks.FromBareEvents)):0.00} ms");
        marks.Add("bath.history", $"the folded ledger, median", $"{Milliseconds(bath, nameof(BathBenchmarks.FromTheLedger)):0.00} ms", $"", $"{Milliseconds(bath, nameof(BathBenchmarks.FromTheLedger)):0.00} ms");
        var again = new BathBenchmarks();
        again.Prepare();
        Row(text, bath, "bare events (4000) to activity, advice and sheets left", nameof(BathBenchmarks.FromBareEvents), again.FromBareEvents, "≤ 10 ms");
        Row(text, bath, "the folded ledger to the same, areas and densities of the sheets included", nameof(BathBenchmarks.FromTheLedger), again.FromTheLedger, "≤ 10 ms");
        Row(text, bath, "the journal's 5003 entries (JSON) to the same", nameof(BathBenchmarks.FromTheEntries), again.FromTheEntries, "");
        return text.Append(marks).ToString();
    }

    private static void Row(StringBuilder text, Summary bath, string what, string method, Func<int> run, string goal)
        => text.AppendLine(CultureInfo.InvariantCulture, $"| {what} | {Milliseconds(bath, method):0.00} ms | {Fastest(run):0.00} ms | {goal} |");

    private static double Milliseconds(Summary bath, string method) => ResultTable.Median(bath, method, null) / 1e6;

    private static double Fastest(Func<int> run)
    {
        var fastest = double.MaxValue;
        for (var i = 0; i < 300; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            run();
            fastest = Math.Min(fastest, Stopwatch.GetElapsedTime(begun).TotalMilliseconds);
        }

        return fastest;
    }
}
