using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What is predicted for a sheet exposed in a certain way.</summary>
/// <param name="Exposure">Time and flash.</param>
/// <param name="FlashFraction">φ, effective exposure of the flash in the middle of the sheet over that of the first visible tone.</param>
/// <param name="FlashGain">What the flash gains in faint tones that can be seen, stops.</param>
/// <param name="Tones">What is predicted for each tone, in the order given.</param>
/// <param name="Odds">Probability of a keeper: every tone that matters inside its band.</param>
/// <param name="LimitedBy">What limits the odds most.</param>
/// <param name="Limits">What each source costs, largest first.</param>
/// <param name="TotalSpread">Spread of a mid-tone's exposure from all sources, stops.</param>
public sealed record ExposureForecast(
    SheetExposure Exposure,
    double FlashFraction,
    Stops FlashGain,
    IReadOnlyList<ToneForecast> Tones,
    Probability Odds,
    ErrorSource LimitedBy,
    IReadOnlyList<LimitShare> Limits,
    Stops TotalSpread);
