using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The exposure of a place's facade through a day, worked out every five minutes and read off between in stops, for plans that ask many times. Within a
/// few per cent, except in the five minutes in which a shadow comes or goes. Immutable.
/// </summary>
public sealed class DayExposure
{
    private const double StepMinutes = 5;

    private readonly DateTimeOffset from;
    private readonly double[] stops;

    private DayExposure(DateTimeOffset from, double[] stops) => (this.from, this.stops) = (from, stops);

    /// <summary>The exposures of a span.</summary>
    /// <param name="place">The place.</param>
    /// <param name="exposure">The exposure by luminance.</param>
    /// <param name="cover">The sky counted on.</param>
    /// <param name="from">Beginning.</param>
    /// <param name="to">End, up to 36 h later.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static DayExposure Of(OutingPlace place, FacadeExposure exposure, SkyCover cover, DateTimeOffset from, DateTimeOffset to)
    {
        var count = 2 + (int)(Guard.Within((to - from).TotalHours, 0, 36, "the length of the day", "h") * 60 / StepMinutes);
        return new DayExposure(from, [.. Enumerable.Range(0, count).Select(i =>
            Math.Log2(exposure.TimeFor(place.LuminanceAt(from.AddMinutes(i * StepMinutes), cover)).Seconds))]);
    }

    /// <summary>The exposure at an instant; at the nearer end outside the span.</summary>
    public Duration At(DateTimeOffset instant)
    {
        var place = Math.Clamp((instant - from).TotalMinutes / StepMinutes, 0, stops.Length - 1);
        var i = Math.Min((int)place, stops.Length - 2);
        return Duration.FromSeconds(Math.Min(Duration.Max, Math.Pow(2, stops[i] + ((place - i) * (stops[i + 1] - stops[i])))));
    }
}
