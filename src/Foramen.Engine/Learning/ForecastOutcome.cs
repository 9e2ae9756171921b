using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>A sheet whose odds were stated, and what became of it.</summary>
/// <param name="Odds">What was stated beforehand.</param>
/// <param name="Keeper">Whether it was kept.</param>
public readonly record struct ForecastOutcome(Probability Odds, bool Keeper);
