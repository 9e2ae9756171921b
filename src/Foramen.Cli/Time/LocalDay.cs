using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Time;

/// <summary>A day by the clocks of a place: it has 23 or 25 hours where they are put forward or back.</summary>
internal sealed partial class LocalDay
{
    private readonly TimeZoneInfo zone;

    private LocalDay(DateOnly date, TimeZoneInfo zone)
    {
        (Date, this.zone) = (date, zone);
        Start = First(date.ToDateTime(TimeOnly.MinValue));
        End = First(date.AddDays(1).ToDateTime(TimeOnly.MinValue));
    }

    public DateOnly Date { get; }

    public string Zone => zone.Id;

    /// <summary>Its first instant.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>The first instant of the next day.</summary>
    public DateTimeOffset End { get; }

    /// <summary>Reads a date and a zone.</summary>
    /// <param name="date">Such as 2024-06-20.</param>
    /// <param name="zone">A name of the tz database, an offset such as +02:00, or UTC.</param>
    /// <exception cref="RefusalException">No such day or zone.</exception>
    public static LocalDay Parse(string date, string zone)
        => DateOnly.TryParseExact(date.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1950 and <= 2050
            ? new LocalDay(day, ZoneOf(zone.Trim()))
            : throw new RefusalException($"The date is \"{date}\"; write a day of 1950 to 2050 such as 2024-06-20.");

    /// <summary>The day after this one, by so many.</summary>
    public LocalDay Later(int days) => new(Date.AddDays(days), zone);

    /// <summary>A time of this day's clocks.</summary>
    /// <exception cref="RefusalException">Not a time, or one that the clocks leap over that day.</exception>
    public DateTimeOffset At(string text, string what)
    {
        if (!TimeOnly.TryParseExact(text.Trim(), ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            throw new RefusalException($"{what} is \"{text}\"; write hours and minutes such as 09:30.");
        }

        var local = Date.ToDateTime(time);
        return zone.IsInvalidTime(local)
            ? throw new RefusalException($"{what} is {text}, which the clocks of {zone.Id} leap over on {Date:yyyy-MM-dd}; say an hour earlier or later.")
            : First(local);
    }

    /// <summary>An instant by the clocks of the place.</summary>
    public DateTimeOffset Shown(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, zone);

    // Of two instants with the same clock the earlier is meant; where the clocks leap over it, the first instant after the leap.
    private DateTimeOffset First(DateTime local)
    {
        while (zone.IsInvalidTime(local))
        {
            local = local.AddMinutes(1);
        }

        var offset = zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local);
        return new DateTimeOffset(local, offset);
    }

    private static TimeZoneInfo ZoneOf(string text)
    {
        if (OffsetPattern().Match(text) is { Success: true } match)
        {
            var offset = new TimeSpan(int.Parse(match.Groups["h"].Value, CultureInfo.InvariantCulture), int.Parse(match.Groups["m"].Value, CultureInfo.InvariantCulture), 0);
            if (offset <= TimeSpan.FromHours(14))
            {
                return TimeZoneInfo.CreateCustomTimeZone(text, match.Groups["sign"].Value == "-" ? -offset : offset, text, text);
            }
        }
        else if (text.Length is > 0 and < 64 && TimeZoneInfo.TryFindSystemTimeZoneById(text, out var found))
        {
            return found;
        }

        throw new RefusalException($"The zone is \"{text}\"; write a name of the time zone database, an offset such as +02:00, or UTC.");
    }

    [GeneratedRegex(@"^(?<sign>[+-])(?<h>\d\d):(?<m>[0-5]\d)$", RegexOptions.CultureInvariant)]
    private static partial Regex OffsetPattern();
}
