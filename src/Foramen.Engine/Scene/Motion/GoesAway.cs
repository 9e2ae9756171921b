namespace Foramen.Engine.Scene;

/// <summary>What the photograph shows in the region is there while it stands, and gone while it "moves": a person who walks off, a parked barge, a lift bridge.</summary>
/// <remarks>What is behind it, the photograph does not show; it is guessed from the region's edges.</remarks>
public sealed record GoesAway : RegionMotion;
