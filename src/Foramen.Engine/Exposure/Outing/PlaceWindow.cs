using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>A window at a place.</summary>
/// <param name="Window">From when to when, to the second.</param>
/// <param name="Best">When in it the exposure is shortest, to an eighth of the window.</param>
/// <param name="ShortestExposure">The exposure then; null where no camera and paper were given.</param>
/// <param name="SunAtBest">Where the sun stands then.</param>
public readonly record struct PlaceWindow(LightWindow Window, DateTimeOffset Best, Duration? ShortestExposure, SkyPosition SunAtBest);
