using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>Two sheets of the same scene, so that one of them is more likely a keeper.</summary>
/// <param name="First">The first sheet.</param>
/// <param name="Second">The second sheet.</param>
/// <param name="Spacing">Effective exposure of the second over the first, stops.</param>
/// <param name="OddsOfOne">Probability that at least one is a keeper.</param>
public sealed record Bracket(SheetExposure First, SheetExposure Second, Stops Spacing, Probability OddsOfOne);
