using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>Fresh developer was added.</summary>
/// <param name="Volume">How much.</param>
/// <param name="Strength">Of what was added: 1 for working strength, 0 for water; up to 1.5.</param>
public sealed record FreshAdded(Volume Volume, double Strength = 1) : BottleEvent;
