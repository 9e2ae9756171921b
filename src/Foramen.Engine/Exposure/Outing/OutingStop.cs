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
    string Name, GeographicPosition Position, IReadOnlyList<LightWindow> Windows, Func<DateTimeOffset, Duration> ExposureAt, int SheetsWanted = 1);
