using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Output;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Calendar;
using Foramen.Exchange.Paper;
using Foramen.Exchange.Places;
using Foramen.Imaging;

namespace Foramen.Cli.Outings;

/// <summary>What an outing hands on: calendar, places, day sheet. Each is made whole before any is written.</summary>
internal static class OutingFiles
{
    public static void Write(ParseResult parsed, OutingOptions options, OutingDay day, Page page)
    {
        if (parsed.GetValue(options.Pdf) is not null && day.Plan is null)
        {
            throw new RefusalException("A day sheet is of one day; leave --days out.");
        }

        IReadOnlyList<PlaceRecord> records = [.. day.Places.Select(place => place.Record)];
        var files = new List<(string Path, byte[] Content)>();
        Make(options.Ics, stream => WindowCalendar.Write(stream, [.. day.Places.Select(place => (place.Place, place.Windows))], TimeProvider.System.GetUtcNow()));
        Make(options.GeoJson, stream => GeoJsonPlaces.Write(stream, records));
        Make(options.Gpx, stream => GpxPlaces.Write(stream, records));
        Make(options.Pdf, stream => DaySheetPdf.Write(stream, SheetOf(day)));
        foreach (var (path, content) in files)
        {
            WholeFile.Write(path, stream => stream.Write(content));
            page.Note($"written to {path}");
        }

        void Make(Option<string?> option, Action<Stream> write)
        {
            if (parsed.GetValue(option) is { } path)
            {
                using var stream = new MemoryStream();
                write(stream);
                files.Add((path, stream.ToArray()));
            }
        }
    }

    private static DaySheet SheetOf(OutingDay day)
    {
        var culture = CultureInfo.InvariantCulture;
        var gear = day.Camera is { } camera ? $", {camera.Name}" + (day.Paper is { } paper ? $", {paper.Name}" : "") : "";
        return new DaySheet(
            day.Day.Date.ToString("d MMMM yyyy", culture),
            $"{day.Wish.Cover.Name} sky counted on{gear}; clocks of {day.Day.Zone}",
            [.. day.Places.Select(place => new DaySheetPlace(
                place.Place, place.Windows, DayChart.Of(place.Place, place.Exposure, day.Wish.Cover, day.Day.Start, day.Day.End), place.Record.Note))],
            day.Plan,
            day.Packing,
            day.Cautions,
            day.Day.Shown);
    }
}
