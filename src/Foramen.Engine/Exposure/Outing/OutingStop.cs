using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>A place that could be visited, with its windows and what a sheet takes there. Immutable.</summary>
/// <param name="Name">The place.</param>
/// <param name="Position">Where it is, for the way there.</param>
/// <param name="Windows">When it is worth being there, in order, not overlapping.</param>
/// <param name="ExposureAt">How long the hole is open if it is opened then.</param>
/// <param name="SheetsWanted">Sheets wanted there, 1 to 20.</param>
public sealed record OutingStop(
    string Name, GeographicPosition Position, IReadOnlyList<LightWindow> Windows, Func<DateTimeOffset, Duration> ExposureAt, int SheetsWanted = 1)
{
    /// <summary>An exposure to plan with where no camera and paper say another (common practice, no source).</summary>
    public static Duration AssumedExposure { get; } = Duration.FromMinutes(2);

    /// <summary>A place with its windows in a day.</summary>
    /// <param name="place">The place.</param>
    /// <param name="windows">When it is worth being there.</param>
    /// <param name="exposure">The exposure by luminance; the assumed one where missing.</param>
    /// <param name="cover">The sky counted on.</param>
    /// <param name="from">When the day begins.</param>
    /// <param name="to">When it ends, up to 36 h later.</param>
    /// <param name="sheetsWanted">Sheets wanted there, 1 to 20.</param>
    public static OutingStop At(
        OutingPlace place, IReadOnlyList<PlaceWindow> windows, FacadeExposure? exposure, SkyCover cover, DateTimeOffset from, DateTimeOffset to, int sheetsWanted)
    {
        var known = exposure is null ? null : DayExposure.Of(place, exposure, cover, from, to);
        return new OutingStop(
            place.Name, place.Position, [.. windows.Select(one => one.Window)], instant => known?.At(instant) ?? AssumedExposure, sheetsWanted);
    }
}
