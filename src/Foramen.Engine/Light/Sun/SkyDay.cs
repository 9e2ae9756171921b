using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// What happens in the sky over one place in a span of time, usually a local day: rise, set, noon and twilights of the Sun, rise and set of
/// the Moon. Rise and set are those of the upper edge over a level horizon with 34′ of refraction, as almanacs have it.
/// </summary>
public sealed record SkyDay
{
    /// <summary>Elevation of the Sun's middle, without air, when its upper edge is on the horizon: −(34′ + 16′).</summary>
    public const double HorizonDegrees = -50.0 / 60;

    private static readonly (double Degrees, SkyEventKind Rising, SkyEventKind Setting)[] Levels =
    [
        (HorizonDegrees, SkyEventKind.Sunrise, SkyEventKind.Sunset),
        (-6, SkyEventKind.CivilDawn, SkyEventKind.CivilDusk),
        (-12, SkyEventKind.NauticalDawn, SkyEventKind.NauticalDusk),
        (-18, SkyEventKind.AstronomicalDawn, SkyEventKind.AstronomicalDusk),
    ];

    private SkyDay(IReadOnlyList<SkyEvent> events, bool sunStaysUp, bool sunStaysDown)
    {
        Events = events;
        SunStaysUp = sunStaysUp;
        SunStaysDown = sunStaysDown;
    }

    /// <summary>All that happens, in order of time.</summary>
    public IReadOnlyList<SkyEvent> Events { get; }

    /// <summary>Whether the Sun is up all the time: midnight sun.</summary>
    public bool SunStaysUp { get; }

    /// <summary>Whether the Sun is down all the time: polar night.</summary>
    public bool SunStaysDown { get; }

    /// <summary>The sky of a local day or any other span of up to ten days.</summary>
    /// <param name="from">Its beginning; its offset is given to all events.</param>
    /// <param name="length">24 h for most days, 23 or 25 where the clock changes.</param>
    /// <param name="place">The observer.</param>
    /// <exception cref="RefusalException">Outside 1950 to 2050, or the span is not between a minute and ten days.</exception>
    public static SkyDay Of(DateTimeOffset from, TimeSpan length, GeographicPosition place)
    {
        Guard.Within(length.TotalHours, 1 / 60.0, 240, "the span of time", "h");
        var start = AstronomicalTime.From(from).DaysUniversal;
        var end = AstronomicalTime.From(from + length).DaysUniversal;
        var track = SunTrack.Over(from, from + length);
        var observer = new Observer(place);
        double SunHeight(double days) => track.Sight(observer, days).TrueElevationDegrees;

        var found = new List<(SkyEventKind Kind, double At)>();
        foreach (var (degrees, rising, setting) in Levels)
        {
            found.AddRange(Crossings.Of(days => SunHeight(days) - degrees, start, end).Select(hit => (hit.Rising ? rising : setting, hit.At)));
        }

        found.AddRange(Crossings.Of(days => observer.WestOfMeridian(track.Interpolate(days, out var sidereal), sidereal, out _), start, end)
            .Where(hit => IsNoon(track, observer, hit.At))
            .Select(hit => (SkyEventKind.SolarNoon, hit.At)));
        found.AddRange(Crossings.Of(days => Moon.UpperEdgeDegrees(observer, days), start, end)
            .Select(hit => (hit.Rising ? SkyEventKind.Moonrise : SkyEventKind.Moonset, hit.At)));

        var crosses = found.Exists(hit => hit.Kind is SkyEventKind.Sunrise or SkyEventKind.Sunset);
        var up = SunHeight(start) >= HorizonDegrees;
        return new SkyDay(
            [.. found.OrderBy(hit => hit.At).Select(hit => new SkyEvent(hit.Kind, from + TimeSpan.FromDays(hit.At - start)))],
            !crosses && up,
            !crosses && !up);
    }

    /// <summary>When something happens first in this span; null if it does not.</summary>
    public DateTimeOffset? First(SkyEventKind kind)
    {
        foreach (var one in Events)
        {
            if (one.Kind == kind)
            {
                return one.Instant;
            }
        }

        return null;
    }

    private static bool IsNoon(SunTrack track, Observer observer, double days)
    {
        observer.WestOfMeridian(track.Interpolate(days, out var sidereal), sidereal, out var above);
        return above;
    }
}
