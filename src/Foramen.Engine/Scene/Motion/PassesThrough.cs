namespace Foramen.Engine.Scene;

/// <summary>Alike things cross the region one after another while there is motion; the photograph shows it without them. Immutable.</summary>
/// <param name="Passers">Their number is that of those who pass while there is motion.</param>
public sealed record PassesThrough(Passers Passers) : RegionMotion;
