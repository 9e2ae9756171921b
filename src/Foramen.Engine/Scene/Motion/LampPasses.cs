namespace Foramen.Engine.Scene;

/// <summary>A lamp goes along the middle of the region, from one side to the other, while there is motion; it need not be on the photograph. Immutable.</summary>
/// <param name="Lamp">Its colour counts as the light's.</param>
public sealed record LampPasses(PassingLamp Lamp) : RegionMotion;
