using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using BenchmarkDotNet.Reports;

namespace Foramen.Benchmarks;

/// <summary>What was measured, as ratios of medians within one run, with what each should reach.</summary>
internal static class ResultTable
{
    private const double DecodedBytes = 4000.0 * 3000 * 4;

    /// <summary>The report in Markdown.</summary>
    public static string Write(Summary convolution, Summary print, Summary growth, double decodePeak, double printPeak)
    {
        var text = new StringBuilder();
        text.AppendLine("# Predicted print: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {MarkRows.Machine}, {RuntimeInformation.OSDescription}.");
        text.AppendLine("Medians of one run of `bench/run`, load average at its end " + MarkRows.Load + "; only ratios mean anything on another machine.");
        text.AppendLine();
        text.AppendLine("| what | ours | against | ratio | should be |");
        text.AppendLine("| --- | --- | --- | --- | --- |");
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        foreach (var half in new[] { 4, 5, 7, 10 })
        {
            var ours = Median(convolution, nameof(ConvolutionBenchmarks.KernelConvolved), half);
            var theirs = Median(convolution, nameof(ConvolutionBenchmarks.Filter2D), half);
            Row(text, $"spot {(2 * half) + 1}×{(2 * half) + 1} over 1600×1270 floats, against OpenCV `Filter2D`", Milliseconds(ours), Milliseconds(theirs), ours / theirs, "≤ 1");
            marks.Add("print.spot", $"{(2 * half) + 1}×{(2 * half) + 1} over 1600×1270 floats", $"{ours / 1e6:0.0} ms", $"{theirs / 1e6:0.0} ms", $"{ours / theirs:0.00}");
        }

        var decode = Median(print, nameof(PrintBenchmarks.DecodeAlone), null);
        var whole = Median(print, nameof(PrintBenchmarks.PhotographToPrint), null);
        Row(text, "12 MP JPEG to a 1600-pixel print as PNG, against decoding that JPEG alone", Milliseconds(whole), Milliseconds(decode), whole / decode, "≤ 1.5");
        Row(text, "peak memory of that job, against the decoded photograph's 48 MB", Megabytes(printPeak), Megabytes(DecodedBytes), printPeak / DecodedBytes, "≤ 6");
        marks.Add("print.time", $"decode to PNG", $"{whole / 1e6:0.0} ms", $"{decode / 1e6:0.0} ms", $"{whole / decode:0.00}");
        marks.Add("print.memory", $"in a process of its own", $"{printPeak / 1e6:0} MB", $"{DecodedBytes / 1e6:0} MB", $"{printPeak / DecodedBytes:0.00}");
        Row(text, "(peak memory of decoding alone)", Megabytes(decodePeak), Megabytes(DecodedBytes), decodePeak / DecodedBytes, "");
        text.AppendLine();
        text.AppendLine("Growth with pixels, milliseconds, and the slope of lg time over lg pixels by least squares (1 is linear; should be ≤ 1.1):");
        text.AppendLine();
        text.AppendLine("| | 1.5 MP | 3 MP | 6 MP | 12 MP | 24 MP | slope |");
        text.AppendLine("| --- | --- | --- | --- | --- | --- | --- |");
        Growth(text, marks, "photograph grows, print 1600 pixels", growth, nameof(GrowthBenchmarks.PhotographGrows));
        Growth(text, marks, "photograph and print grow together", growth, nameof(GrowthBenchmarks.PhotographAndPrintGrow));
        return text.Append(marks).ToString();
    }

    private static void Row(StringBuilder text, string what, string ours, string against, double ratio, string goal)
        => text.AppendLine(CultureInfo.InvariantCulture, $"| {what} | {ours} | {against} | {ratio:0.00} | {goal} |");

    private static void Growth(StringBuilder text, MarkRows marks, string what, Summary summary, string method)
    {
        double[] sizes = [1.5, 3, 6, 12, 24];
        var times = Array.ConvertAll(sizes, size => Median(summary, method, size));
        var (meanX, meanY) = (sizes.Average(Math.Log), times.Average(Math.Log));
        var (over, under) = (0.0, 0.0);
        for (var i = 0; i < sizes.Length; i++)
        {
            var x = Math.Log(sizes[i]) - meanX;
            over += x * (Math.Log(times[i]) - meanY);
            under += x * x;
        }

        text.AppendLine(CultureInfo.InvariantCulture, $"| {what} | {string.Join(" | ", times.Select(time => (time / 1e6).ToString("0", CultureInfo.InvariantCulture)))} | {over / under:0.00} |");
        marks.Add("print.growth", $"{what}, 1.5 to 24 MP", $"", $"", $"{over / under:0.00}");
    }

    internal static double Median(Summary summary, string method, object? parameter)
    {
        var report = summary.Reports.Single(one => one.BenchmarkCase.Descriptor.WorkloadMethod.Name == method
            && (parameter is null || one.BenchmarkCase.Parameters.Items.Any(item => Equals(item.Value, parameter))));
        return report.ResultStatistics?.Median
            ?? throw new InvalidOperationException($"{method} ({parameter}) could not be measured; run with --verbose to see why.");
    }

    private static string Milliseconds(double nanoseconds) => string.Create(CultureInfo.InvariantCulture, $"{nanoseconds / 1e6:0.0} ms");

    private static string Megabytes(double bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0} MB");
}
