using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Paper;

/// <summary>A day at one place for a chart: where the sun stands and how long an exposure takes, at even steps.</summary>
/// <param name="From">The first step's instant.</param>
/// <param name="Step">From each to the next.</param>
/// <param name="Standings">Where the sun stands.</param>
/// <param name="Exposures">The exposure of the facade; null where it would be longer than a day or none was asked for.</param>
public sealed record DayChart(DateTimeOffset From, TimeSpan Step, IReadOnlyList<SunStanding> Standings, IReadOnlyList<Duration?> Exposures)
{
    /// <summary>The chart of a span.</summary>
    /// <param name="place">The place.</param>
    /// <param name="exposure">The exposure by luminance, or null.</param>
    /// <param name="cover">The sky counted on.</param>
    /// <param name="from">Beginning.</param>
    /// <param name="to">End, up to 36 h later.</param>
    /// <param name="steps">Steps, 2 to 1500.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static DayChart Of(OutingPlace place, FacadeExposure? exposure, SkyCover cover, DateTimeOffset from, DateTimeOffset to, int steps = 144)
    {
        Guard.Within(steps, 2, 1500, "the number of steps");
        Guard.Within((to - from).TotalHours, 0, 36, "the length of the day", "h");
        var step = (to - from) / (steps - 1);
        var instants = Enumerable.Range(0, steps).Select(i => from + (step * i)).ToList();
        return new DayChart(
            from,
            step,
            [.. instants.Select(place.Standing)],
            [.. instants.Select(instant => exposure?.TimeFor(place.LuminanceAt(instant, cover)) is { Seconds: < 86_400 } time ? time : (Duration?)null)]);
    }
}
