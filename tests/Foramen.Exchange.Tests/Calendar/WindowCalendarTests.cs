using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Calendar;
using static Foramen.Exchange.Tests.Examples;

namespace Foramen.Exchange.Tests.Calendar;

public class WindowCalendarTests
{
    private static readonly DateTimeOffset Stamp = new(2024, 6, 1, 12, 0, 0, TimeSpan.Zero);

    // Read by rules written down here from RFC 5545 and nowhere else: lines end in CRLF, are 75 octets at most and are unfolded at a leading space (3.1);
    // every calendar has VERSION and PRODID (3.6), every event UID and DTSTAMP (3.6.1); times in UTC end in Z (3.3.5); commas and semicolons are escaped (3.3.11).
    [Fact]
    [Source("rfc-5545", "3.1, 3.3.5, 3.3.11, 3.6, 3.6.1")]
    public void The_calendar_keeps_to_the_standard()
    {
        var (place, windows) = Midsummer();
        var bytes = Bytes(place, windows);
        var raw = Encoding.UTF8.GetString(bytes);
        Assert.All(raw.Split("\r\n", StringSplitOptions.RemoveEmptyEntries), line =>
        {
            Assert.DoesNotContain('\n', line);
            Assert.InRange(Encoding.UTF8.GetByteCount(line), 1, 75);
        });
        var lines = raw.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("BEGIN:VCALENDAR", lines[0]);
        Assert.Equal("END:VCALENDAR", lines[^1]);
        Assert.Contains("VERSION:2.0", lines);
        Assert.Contains(lines, line => line.StartsWith("PRODID:", StringComparison.Ordinal));
        List<string> Of(string name) => [.. lines.Where(line => line.Split(':', ';')[0] == name).Select(line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..])];
        Assert.Equal(windows.Count, Of("UID").Distinct().Count());
        Assert.Equal(windows.Count, Of("DTSTAMP").Count);
        Assert.All(Of("SUMMARY"), summary => Assert.Equal(@"Light: weir\, lower\; east", summary));
        DateTime Instant(string text) => DateTime.ParseExact(text, "yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal);
        Assert.All(windows.Zip(Of("DTSTART").Zip(Of("DTEND"))), pair =>
        {
            Assert.Equal(0, (pair.First.Window.Start.UtcDateTime - Instant(pair.Second.First)).TotalSeconds, 1.0);
            Assert.Equal(0, (pair.First.Window.End.UtcDateTime - Instant(pair.Second.Second)).TotalSeconds, 1.0);
        });
    }

    // Debian's python3-icalendar, which ./test installs: a reader that shares nothing with the writer.
    [Fact]
    [Source("icalendar", Basis.Library)]
    public void Another_library_reads_the_same_windows()
    {
        var (place, windows) = Midsummer();
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(
            """
            import sys, icalendar
            calendar = icalendar.Calendar.from_ical(sys.stdin.buffer.read())
            for event in calendar.walk('VEVENT'):
                print(int(event['DTSTART'].dt.timestamp()), int(event['DTEND'].dt.timestamp()), event['SUMMARY'], sep='|')
            """);
        using var python = Process.Start(start)!;
        python.StandardInput.BaseStream.Write(Bytes(place, windows));
        python.StandardInput.Close();
        var read = python.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var complaint = python.StandardError.ReadToEnd();
        python.WaitForExit();
        Assert.True(python.ExitCode == 0, complaint);
        Assert.Equal(windows.Count, read.Length);
        Assert.All(windows.Zip(read.Select(line => line.Split('|'))), pair =>
        {
            Assert.Equal(pair.First.Window.Start.ToUnixTimeSeconds(), long.Parse(pair.Second[0], CultureInfo.InvariantCulture), 1.0);
            Assert.Equal(pair.First.Window.End.ToUnixTimeSeconds(), long.Parse(pair.Second[1], CultureInfo.InvariantCulture), 1.0);
            Assert.Equal("Light: weir, lower; east", pair.Second[2]);
        });
    }

    [Fact]
    public void Written_twice_it_is_the_same()
    {
        var (place, windows) = Midsummer();
        Assert.Equal(Bytes(place, windows), Bytes(place, windows));
    }

    private static byte[] Bytes(OutingPlace place, IReadOnlyList<PlaceWindow> windows)
        => Written(stream => WindowCalendar.Write(stream, [(place, windows)], Stamp));

    private static (OutingPlace Place, IReadOnlyList<PlaceWindow> Windows) Midsummer()
    {
        var place = new OutingPlace { Name = "weir, lower; east", Position = GeographicPosition.FromDegrees(52.5, 5.25), Facade = Facade.Facing(Angle.FromDegrees(90)) };
        var from = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.FromHours(2));
        var windows = WindowFinder.Find(place, new WindowWish { LongestExposure = null }, null, from, from.AddDays(3));
        Assert.Equal(3, windows.Count);
        return (place, windows);
    }
}
