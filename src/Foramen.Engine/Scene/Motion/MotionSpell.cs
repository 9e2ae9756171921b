using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Part of an exposure during which something moves, or stands.</summary>
/// <param name="Time">How long by the clock.</param>
/// <param name="Worth">What the light of that time was worth against other spells of the same exposure, in any unit, zero or more; nothing while the hole was covered.</param>
/// <param name="Moves">Whether it moved.</param>
public readonly record struct MotionSpell(Duration Time, double Worth, bool Moves);
