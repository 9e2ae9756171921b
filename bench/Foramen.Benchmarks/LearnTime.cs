using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Benchmarks;

/// <summary>What a journal of a thousand judged sheets teaches, from nothing and with one judgement more.</summary>
internal static class LearnTime
{
    private const int Sheets = 1000;
    private const int Rounds = 31;

    public static string Measure()
    {
        var entries = LongHistory.Of(Sheets);
        var now = entries[^1].At.AddDays(1);
        var whole = Ledger.Of(EntrySet.Of(entries));
        var before = Ledger.Of(EntrySet.Of(entries.Take(entries.Count - 1)));
        var known = LedgerLessons.Of(before);
        var all = LedgerLessons.Of(whole, known);
        var lines = entries.Select(EntryLine.Write).ToList();

        var reading = Times(() => EntrySet.Of(lines.Select(line => EntryLine.Read(line))));
        var folding = Times(() => Ledger.Of(EntrySet.Of(entries)));
        var lessons = Times(() => LedgerLessons.Of(whole));
        var beliefs = Times(() => all.BeliefsAsOf(now));
        var appending = Times(() => before.With(entries[^1]));
        var lesson = Times(() => LedgerLessons.Of(whole, known));
        var update = Times(() => LedgerLessons.Of(before.With(entries[^1]), known).BeliefsAsOf(now));
        var text = new StringBuilder();
        void Row(string what, (double Median, double Fastest) time, string limit = "")
            => text.AppendLine(CultureInfo.InvariantCulture, $"| {what} | {time.Median:0.0} ms | {time.Fastest:0.0} ms | {limit} |");
        text.AppendLine("# Learning: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {MarkRows.Machine}, `bench/run learn`, {Rounds} single runs each, load average at the end {MarkRows.Load}.");
        text.AppendLine(CultureInfo.InvariantCulture, $"{Sheets} sheets in {entries.Count} entries as bench/LongHistory.cs makes them up: five boxes, two cameras, three skies, three judged tones each, in half stops, one judgement in forty 2.5 stops out.");
        text.AppendLine();
        text.AppendLine("| what | median | fastest | should be |");
        text.AppendLine("| --- | --- | --- | --- |");
        Row("one judgement more: folded, its lesson, the beliefs", update, "< 50 ms");
        Row("of that, the fold", appending);
        Row("of that, the lesson", lesson);
        Row("beliefs from all lessons at once", beliefs, "< 50 ms");
        Row("lessons of the whole ledger, none known before", lessons);
        Row("the whole ledger folded, from entries read before", folding);
        Row("the entries read from their lines, hashes checked", reading);
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        marks.Add("learn.native", $"one judgement more: folded, its lesson, the beliefs, median", $"{update.Median:0.0} ms", $"", $"{update.Median:0.0} ms");
        marks.Add("learn.native", $"beliefs from all lessons at once, median", $"{beliefs.Median:0.0} ms", $"", $"{beliefs.Median:0.0} ms");
        return text.Append(marks).ToString();
    }

    private static (double Median, double Fastest) Times(Func<object> work)
    {
        // Four to warm up, so that what is hot is compiled for good.
        for (var i = 0; i < 4; i++)
        {
            work();
        }

        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[Rounds / 2], times[0]);
    }
}
