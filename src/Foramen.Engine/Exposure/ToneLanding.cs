using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>Where a tone comes to lie by a time and a flash, without its odds.</summary>
/// <param name="Tone">The tone.</param>
/// <param name="FromAim">Total effective exposure against the one aimed at, in stops; null for a tone that may burn or block.</param>
/// <param name="FlashShare">Part of its effective exposure that comes from the flash, 0 to 1.</param>
public sealed record ToneLanding(PlacedTone Tone, Stops? FromAim, double FlashShare);
