using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>What one part costs.</summary>
/// <param name="Part">The part.</param>
/// <param name="OddsWithout">Odds of a keeper if it never went wrong.</param>
/// <param name="Share">Its part of all that is lost, 0 to 1.</param>
public sealed record OddsShare(OddsPart Part, Probability OddsWithout, double Share);
