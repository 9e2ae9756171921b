using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;

namespace Foramen.Exchange.Paper;

/// <summary>The day sheet as one upright A4 page: windows, a chart of the day, the schedule, what to pack, what to mind. Black and grey, so that any printer does.</summary>
public static class DaySheetPdf
{
    private const double Left = 15;

    private const double Right = PdfPage.WidthMillimetres - 15;

    private const double Bottom = 285;

    private const int MostPlaces = 4;

    private const double StepMillimetres = 4.6;

    /// <summary>Writes the page.</summary>
    public static void Write(Stream into, DaySheet sheet)
    {
        var page = new PdfPage();
        page.Text(Left, 21, Fitted(sheet.Title, 150, 20), 20, bold: true);
        page.Text(Left, 27.5, Fitted(sheet.Beneath, Right - Left, 9), 9, grey: 0.3);
        var y = 35.0;
        foreach (var place in sheet.Places.Take(MostPlaces))
        {
            y = Place(page, sheet, place, y);
        }

        if (sheet.Places.Count > MostPlaces)
        {
            page.Text(Left, y, $"and {sheet.Places.Count - MostPlaces} more places, which this page has no room for", 8, grey: 0.3);
            y += 6;
        }

        if (sheet.Places.Count > 0)
        {
            Legend(page, y);
            y += 4;
        }

        // Two columns: the schedule on the left, packing and cautions on the right.
        page.Line([(Left, y), (Right, y)], 0.3);
        var columns = y + 6;
        Schedule(page, sheet, columns);
        var right = Heading(page, 112, columns, "To pack");
        foreach (var line in sheet.Packing)
        {
            if (right > Bottom - 45)
            {
                break;
            }

            page.Line([(112, right - 2.3), (114.3, right - 2.3), (114.3, right), (112, right), (112, right - 2.3)], 0.2);
            right = page.Paragraph(116.5, right, Right - 116.5, line, 8, 3.7) + 0.4;
        }

        right = Heading(page, 112, right + 3, "To mind");
        foreach (var line in sheet.Cautions)
        {
            if (right > Bottom - 6)
            {
                break;
            }

            right = page.Paragraph(112, right, Right - 112, line, 8, 3.7) + 0.6;
        }

        page.Text(Left, 291, "Estimates are estimates. Never look at the sun through the hole, a tube or any sighting aid.", 8, bold: true);
        page.Write(into, sheet.Title);
    }

    private static double Place(PdfPage page, DaySheet sheet, DaySheetPlace place, double y)
    {
        page.Text(Left, y, Fitted(place.Place.Name, 80, 11), 11, bold: true);
        var facing = FormattableString.Invariant($"faces {place.Place.Facade.Bearing.Degrees:0}°");
        page.Text(Right - PdfPage.WidthOf(facing, 8), y, facing, 8, grey: 0.3);
        var windows = place.Windows.Count == 0
            ? "No window this day."
            : "Windows: " + string.Join(", ", place.Windows.Take(4).Select(one => Window(sheet, one)));
        page.Text(Left, y + 4.6, Fitted(windows, Right - Left, 9), 9);
        var chart = y + 7;
        Chart(page, sheet, place, chart);
        return chart + 30 + (place.Note is { } note ? page.Paragraph(Left, chart + 29, Right - Left, Fitted(note, Right - Left, 8), 8, 4) - chart - 29 : 0);
    }

    private static void Legend(PdfPage page, double y)
    {
        var x = Left + 14;
        foreach (var (grey, text) in new[] { (1.0, "sun on the facade"), (0.93, "grazing it"), (0.80, "behind it or hidden"), (0.0, "in the picture"), (0.55, "down") })
        {
            page.Fill(x, y - 2.2, 3.5, 2.4, grey);
            page.Line([(x, y - 2.2), (x + 3.5, y - 2.2), (x + 3.5, y + 0.2), (x, y + 0.2), (x, y - 2.2)], 0.1);
            page.Text(x + 4.5, y, text, 7, grey: 0.3);
            x += 8 + PdfPage.WidthOf(text, 7);
        }

        page.Text(x, y, "below: exposure, in stops", 7, grey: 0.3);
    }

    private static string Window(DaySheet sheet, PlaceWindow one)
    {
        var span = $"{Clock(sheet, one.Window.Start)} to {Clock(sheet, one.Window.End)}";
        return one.ShortestExposure is { } time ? $"{span} (from {Time(time.Seconds)} at {Clock(sheet, one.Best)})" : span;
    }

    /// <summary>A band for the sun above, the exposure time below on a scale of stops.</summary>
    private static void Chart(PdfPage page, DaySheet sheet, DaySheetPlace place, double top)
    {
        const double Band = 4;
        const double Height = 16;
        const double From = Left + 14;
        var chart = place.Chart;
        var count = chart.Standings.Count;
        double X(double index) => From + ((Right - From) * index / (count - 1));
        for (var i = 0; i < count - 1; i++)
        {
            double? grey = chart.Standings[i].Kind switch
            {
                SunStandingKind.Down => 0.55,
                SunStandingKind.InPicture => 0.0,
                SunStandingKind.OnFacade => null,
                SunStandingKind.Grazing => 0.93,
                _ => 0.80,
            };
            if (grey is { } shade)
            {
                page.Fill(X(i), top, X(i + 1) - X(i) + 0.05, Band, shade);
            }
        }

        page.Line([(From, top), (Right, top), (Right, top + Band), (From, top + Band), (From, top)], 0.2);
        page.Text(Left, top + 3, "sun", 7, grey: 0.3);

        // Hours along the lower edge, each at its own instant, so that a day of 23 or 25 hours is drawn as it is.
        var bottom = top + Band + 1 + Height;
        var end = chart.From + (chart.Step * (count - 1));
        for (var hour = chart.From.AddMinutes(60 - chart.From.Minute - (chart.From.Second / 60.0)).AddHours(-1); hour <= end; hour = hour.AddHours(1))
        {
            if (hour < chart.From)
            {
                continue;
            }

            var x = X((hour - chart.From) / chart.Step);
            page.Line([(x, top + Band + 1), (x, bottom)], 0.1, 0.85);
            var local = sheet.InZone(hour);
            if (local.Hour % 2 == 0)
            {
                var text = local.ToString("HH", CultureInfo.InvariantCulture);
                page.Text(x - (PdfPage.WidthOf(text, 7) / 2), bottom + 3, text, 7, grey: 0.3);
            }
        }

        var times = chart.Exposures.Where(time => time is not null).Select(time => time!.Value.Seconds).ToList();
        page.Line([(From, top + Band + 1), (From, bottom), (Right, bottom)], 0.2);
        if (times.Count == 0)
        {
            page.Text(From + 2, bottom - 6, "no exposure worked out: no camera and paper, or no light", 8, grey: 0.3);
            return;
        }

        var least = Math.Floor(Math.Log2(Math.Max(0.01, times.Min())));
        var most = Math.Min(Math.Ceiling(Math.Log2(times.Max())), least + 8);
        most = Math.Max(most, least + 1);
        double Y(double seconds) => bottom - (Height * (Math.Log2(seconds) - least) / (most - least));
        page.Text(Left, Y(Math.Pow(2, least)), Time(Math.Pow(2, least)), 7, grey: 0.3);
        page.Text(Left, Y(Math.Pow(2, most)) + 2.4, Time(Math.Pow(2, most)), 7, grey: 0.3);
        var line = new List<(double, double)>();
        for (var i = 0; i < count; i++)
        {
            if (chart.Exposures[i] is { } time && Math.Log2(time.Seconds) <= most)
            {
                line.Add((X(i), Y(time.Seconds)));
            }
            else
            {
                page.Line(line, 0.5);
                line = [];
            }
        }

        page.Line(line, 0.5);
    }

    private static void Schedule(PdfPage page, DaySheet sheet, double y)
    {
        y = Heading(page, Left, y, "Schedule");
        if (sheet.Plan is not { } plan || plan.Steps.Count == 0)
        {
            page.Text(Left, y, "Nothing fits into this day's light.", 9);
            return;
        }

        // Room for the end, the sum and what was left out.
        var room = Math.Max(1, (int)((Bottom - 11 - y) / StepMillimetres));
        foreach (var step in plan.Steps.Take(room))
        {
            var strong = step.Kind == OutingStepKind.Expose;
            page.Text(Left, y, Clock(sheet, step.Start), 9, bold: strong);
            page.Text(Left + 12, y, Fitted(Words(step), 78, 9), 9, bold: strong);
            y += StepMillimetres;
        }

        if (plan.Steps.Count > room)
        {
            page.Text(Left, y, $"and {plan.Steps.Count - room} more steps", 8, grey: 0.3);
            y += StepMillimetres;
        }
        else
        {
            page.Text(Left, y, Clock(sheet, plan.Steps[^1].End), 9);
            page.Text(Left + 12, y, "done", 9);
            y += StepMillimetres;
        }

        page.Text(Left, y + 1, FormattableString.Invariant($"{plan.Sheets} sheets, {plan.SheetsHopedFor:0.0} of them in sun on average"), 8, grey: 0.3);
        if (plan.LeftOut.Count > 0)
        {
            page.Text(Left, y + 5, Fitted("no room for: " + string.Join(", ", plan.LeftOut), 90, 8), 8, grey: 0.3);
        }
    }

    private static string Words(OutingStep step) => step.Kind switch
    {
        OutingStepKind.Walk => $"walk to {step.Place}",
        OutingStepKind.SetUp => $"set up at {step.Place}",
        OutingStepKind.Wait => "wait for the light",
        OutingStepKind.Flash => $"load and flash sheet {step.Sheet}",
        OutingStepKind.Expose => FormattableString.Invariant($"expose sheet {step.Sheet}, {Time((step.End - step.Start).TotalSeconds)}, sun {step.SunOdds.Fraction * 100:0} %"),
        _ => $"process sheet {step.Sheet}",
    };

    private static double Heading(PdfPage page, double x, double y, string text)
    {
        page.Text(x, y, text, 11, bold: true);
        return y + 5.5;
    }

    private static string Fitted(string text, double width, double points)
    {
        if (PdfPage.WidthOf(text, points) <= width)
        {
            return text;
        }

        while (text.Length > 1 && PdfPage.WidthOf(text + "…", points) > width)
        {
            text = text[..^1];
        }

        return text.TrimEnd() + "…";
    }

    private static string Clock(DaySheet sheet, DateTimeOffset instant) => sheet.InZone(instant).AddSeconds(30).ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Time(double seconds) => seconds switch
    {
        < 10 => FormattableString.Invariant($"{seconds:0.0} s"),
        < 100 => FormattableString.Invariant($"{seconds:0} s"),
        < 5400 => FormattableString.Invariant($"{seconds / 60:0.#} min"),
        _ => FormattableString.Invariant($"{seconds / 3600:0.#} h"),
    };
}
