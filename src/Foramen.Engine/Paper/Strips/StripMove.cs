using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>One stretch of light while a strip is made, and what is done with the card after it.</summary>
/// <param name="From">When it begins, on a clock that counts light only.</param>
/// <param name="Light">How long the light stays.</param>
/// <param name="CardPatch">The patch that is covered (or uncovered) after it; null after the last, which ends the light.</param>
public readonly record struct StripMove(Duration From, Duration Light, int? CardPatch);
