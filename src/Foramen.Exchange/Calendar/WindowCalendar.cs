using System.Globalization;
using System.Text;
using Foramen.Engine.Exposure;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Foramen.Exchange.Calendar;

/// <summary>Windows as an iCalendar (RFC 5545), each an event in universal time, so that any calendar shows it in its own zone.</summary>
public static class WindowCalendar
{
    /// <summary>Writes the events.</summary>
    /// <param name="into">The file.</param>
    /// <param name="windows">Each place with its windows.</param>
    /// <param name="written">When this is written, for the events' stamp.</param>
    public static void Write(Stream into, IReadOnlyList<(OutingPlace Place, IReadOnlyList<PlaceWindow> Windows)> windows, DateTimeOffset written)
    {
        var calendar = new Ical.Net.Calendar { ProductId = "-//Foramen//Windows of light//EN" };
        foreach (var (place, spans) in windows)
        {
            foreach (var span in spans)
            {
                calendar.Events.Add(new CalendarEvent
                {
                    // The same window written again is the same event.
                    Uid = string.Create(CultureInfo.InvariantCulture, $"{span.Window.Start.UtcDateTime:yyyyMMdd'T'HHmmss'Z'}-{Slug(place)}@foramen"),
                    DtStamp = Utc(written),
                    Start = Utc(span.Window.Start),
                    End = Utc(span.Window.End),
                    Summary = $"Light: {place.Name}",
                    Description = Description(span),
                    GeographicLocation = new GeographicLocation(place.Position.Latitude.Degrees, place.Position.Longitude.Degrees),
                });
            }
        }

        var text = new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar could not be written.");
        into.Write(Encoding.UTF8.GetBytes(text));
    }

    private static string Description(PlaceWindow span)
    {
        var best = FormattableString.Invariant($"Sun at azimuth {span.SunAtBest.Azimuth.Degrees:0}°, elevation {span.SunAtBest.Elevation.Degrees:0}° when the light is best.");
        return span.ShortestExposure is { } time ? $"{best} Exposure then about {time.ToRoughText()}." : best;
    }

    private static CalDateTime Utc(DateTimeOffset instant)
    {
        var whole = new DateTime(instant.UtcTicks / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond, DateTimeKind.Utc);
        return new CalDateTime(whole, "UTC");
    }

    private static string Slug(OutingPlace place)
    {
        var letters = place.Name.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-');
        return FormattableString.Invariant($"{string.Concat(letters)}-{place.Position.Latitude.Degrees:0.####}-{place.Position.Longitude.Degrees:0.####}");
    }
}
