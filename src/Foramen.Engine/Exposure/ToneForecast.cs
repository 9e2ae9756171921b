using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What is predicted for one tone.</summary>
/// <param name="Tone">The tone.</param>
/// <param name="Density">Predicted density on the sheet.</param>
/// <param name="DensitySpread">Its standard deviation.</param>
/// <param name="Outcome">How it is expected to come out.</param>
/// <param name="FromAim">Total effective exposure against the one aimed at, in stops; null for a tone that may burn or block.</param>
/// <param name="ChanceAsWanted">Probability that it lands inside its band; 1 for a tone that may burn or block.</param>
public sealed record ToneForecast(
    PlacedTone Tone, Density Density, double DensitySpread, ToneOutcome Outcome, Stops? FromAim, Probability ChanceAsWanted);
