using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>What is believed of one thing: a normal distribution. In stops; a failure exponent in stops for each doubling of time, ageing for each ten sheets.</summary>
/// <param name="Key">Of what.</param>
/// <param name="Mean">The best guess, against what label and description say.</param>
/// <param name="Spread">Standard deviation now.</param>
/// <param name="PriorSpread">Standard deviation before any evidence.</param>
/// <param name="PriorMean">The best guess before any evidence.</param>
public sealed record Belief(BeliefKey Key, Stops Mean, Stops Spread, Stops PriorSpread, Stops PriorMean);
