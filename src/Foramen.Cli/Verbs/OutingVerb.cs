using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Outings;
using Foramen.Cli.Output;
using Foramen.Engine.Exposure;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen outing</c>: when places are worth being at, and a day of sheets.</summary>
internal static class OutingVerb
{
    private const int MostWindowsShown = 12;

    public static Command Create(Page page)
    {
        var options = new OutingOptions();
        var verb = new Command(
            "outing",
            """
            Says when the light at your places is worth being there, plans a day of sheets, and hands both on as a calendar, places and a day sheet.

            Try:
              foramen outing --places demo/places.geojson --date 2024-06-20 --zone +02:00
              foramen outing --places demo/places.geojson --date 2024-06-20 --zone +02:00 --camera demo/kit/box-a.json --paper demo/kit/positive.json --longest 4min --pdf day.pdf --ics day.ics
              foramen outing --places demo/places.geojson --date 2024-06-20 --zone +02:00 --lamplit floodlit --camera demo/kit/box-a.json --paper demo/kit/positive.json
              foramen outing --places demo/places.geojson --date 2024-01-01 --days 366 --json
            """);
        options.AddTo(verb);
        verb.SetAction(parsed =>
        {
            var day = OutingDay.Read(parsed, options);
            OutingFiles.Write(parsed, options, day, page);
            return page.Show(parsed.GetValue(options.Json), Report(day), ReportJson.Default.OutingReport, () => Write(page, day));
        });
        return verb;
    }

    private static OutingReport Report(OutingDay day)
    {
        string Shown(DateTimeOffset instant) => Time.InstantText.Of(day.Day.Shown(instant));
        return new OutingReport
        {
            Date = day.Day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Zone = day.Day.Zone,
            From = Shown(day.From),
            To = Shown(day.To),
            Sky = day.Wish.Cover.Name,
            Places = [.. day.Places.Select(place => new OutingPlaceReport(
                place.Place.Name,
                place.Place.Position.Latitude.Degrees,
                place.Place.Position.Longitude.Degrees,
                place.Place.Facade.Bearing.Degrees,
                [.. place.Windows.Select(one => new OutingWindowReport(
                    Shown(one.Window.Start), Shown(one.Window.End), Shown(one.Best), one.ShortestExposure?.Seconds, one.SunAtBest.Azimuth.Degrees, one.SunAtBest.Elevation.Degrees))],
                [.. place.Balances.Select(one => new OutingSpanReport(Shown(one.Start), Shown(one.End)))]))],
            Lamplit = day.Lamplit is { } lit
                ? new OutingLamplitReport(lit.CandelasPerSquareMetre, day.LamplitExposure?.Time.Seconds, day.LamplitExposure?.Shorter.Seconds, day.LamplitExposure?.Longer.Seconds)
                : null,
            Schedule = [.. (day.Plan?.Steps ?? []).Select(step => new OutingStepReport(
                JsonName(step.Kind), step.Place, Shown(step.Start), Shown(step.End), step.Sheet == 0 ? null : step.Sheet, step.Kind == OutingStepKind.Expose ? step.SunOdds.Fraction : null))],
            LeftOut = day.Plan?.LeftOut ?? [],
            Sheets = day.Plan?.Sheets ?? 0,
            SheetsHopedFor = day.Plan?.SheetsHopedFor ?? 0,
            Packing = day.Packing,
            Cautions = day.Cautions,
        };
    }

    private static string JsonName(OutingStepKind kind) => kind switch
    {
        OutingStepKind.Walk => "walk",
        OutingStepKind.SetUp => "setUp",
        OutingStepKind.Wait => "wait",
        OutingStepKind.Flash => "flash",
        OutingStepKind.Expose => "expose",
        _ => "process",
    };

    private static void Write(Page page, OutingDay day)
    {
        var culture = CultureInfo.CurrentCulture;
        string Clock(DateTimeOffset instant) => Time.InstantText.Clock(day.Day.Shown(instant));
        foreach (var place in day.Places)
        {
            page.Line(string.Create(culture, $"{place.Place.Name}, facing {place.Place.Facade.Bearing.Degrees:0}°"));
            if (place.Windows.Count == 0)
            {
                page.Line("  no window");
            }

            page.Table(
                ["", "from", "to", "best", "exposure", "sun"],
                place.Windows.Take(MostWindowsShown).Select(one => (IReadOnlyList<string>)
                [
                    "  " + day.Day.Shown(one.Window.Start).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                    Clock(one.Window.Start),
                    Clock(one.Window.End),
                    Clock(one.Best),
                    one.ShortestExposure is { } time ? string.Create(culture, $"{time.Seconds:0} s") : "",
                    string.Create(culture, $"{one.SunAtBest.Azimuth.Degrees:0}° / {one.SunAtBest.Elevation.Degrees:0}° high"),
                ]));
            foreach (var balance in place.Balances.Take(MostWindowsShown))
            {
                page.Line(string.Create(
                    culture, $"  sky and lamps in balance {day.Day.Shown(balance.Start).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, {Clock(balance.Start)} to {Clock(balance.End)}"));
            }

            if (place.Windows.Count > MostWindowsShown)
            {
                page.Line(string.Create(culture, $"  and {place.Windows.Count - MostWindowsShown} more windows; --json or --ics gives them all"));
            }
        }

        if (day.LamplitExposure is { } night)
        {
            page.Line();
            page.Line(
                $"What the lamps light needs about {night.Time.ToRoughText()} for a mid-tone; {night.Shorter.ToRoughText()} to {night.Longer.ToRoughText()} by the doubt of failure alone");
            if (night.IsBeyondPlanning)
            {
                page.Line("That is longer than can be planned: a wider hole or a faster paper would shorten it, or leave what they light dark.");
            }
        }

        if (day.Lamplit is not null)
        {
            page.Note("The sky is taken as even: after sunset the west is a stop or two brighter, the east darker, and a town's glow keeps it from getting darker than that.");
        }

        if (day.Plan is { } plan)
        {
            page.Line();
            page.Line(string.Create(culture, $"Schedule: {plan.Sheets} sheets, {plan.SheetsHopedFor:0.0} of them in sun on average"));
            page.Table(
                ["", "from", "to", ""],
                plan.Steps.Select(step => (IReadOnlyList<string>)
                [
                    "  " + Words(step), Clock(step.Start), Clock(step.End), step.Kind == OutingStepKind.Expose ? string.Create(culture, $"sun {step.SunOdds.Fraction * 100:0} %") : "",
                ]));
            if (plan.LeftOut.Count > 0)
            {
                page.Line("No room for: " + string.Join(", ", plan.LeftOut));
            }
        }

        foreach (var caution in day.Cautions)
        {
            page.Note(caution);
        }
    }

    private static string Words(OutingStep step) => step.Kind switch
    {
        OutingStepKind.Walk => $"walk to {step.Place}",
        OutingStepKind.SetUp => $"set up at {step.Place}",
        OutingStepKind.Wait => "wait for the light",
        OutingStepKind.Flash => $"load and flash sheet {step.Sheet}",
        OutingStepKind.Expose => $"expose sheet {step.Sheet}",
        _ => $"process sheet {step.Sheet}",
    };
}
