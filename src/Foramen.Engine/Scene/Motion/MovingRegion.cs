namespace Foramen.Engine.Scene;

/// <summary>A part of the photograph in which something moves. Immutable.</summary>
/// <param name="Name">What it is, in the photographer's words.</param>
/// <param name="Place">Where on the photograph.</param>
/// <param name="Motion">How it moves.</param>
public sealed record MovingRegion(string Name, RectangleInPhotograph Place, RegionMotion Motion);
