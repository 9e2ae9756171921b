using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What one source of error costs: the odds if it were known exactly, and its share of all that is lost.</summary>
/// <param name="Source">The source.</param>
/// <param name="OddsWithout">Odds of a keeper if this source had no error.</param>
/// <param name="Share">Its part of the gains of all sources, 0 to 1.</param>
public sealed record LimitShare(ErrorSource Source, Probability OddsWithout, double Share);
