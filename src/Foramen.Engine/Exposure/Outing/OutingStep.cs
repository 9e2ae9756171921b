using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>A part of the day's plan.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Place">Where, or where to.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Sheet">Which sheet of the day, from 1; 0 for none.</param>
/// <param name="SunOdds">For an exposure, the chance that no cloud is before the sun.</param>
public readonly record struct OutingStep(OutingStepKind Kind, string Place, DateTimeOffset Start, DateTimeOffset End, int Sheet, Probability SunOdds);
