using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A moving region and when it moved.</summary>
/// <param name="Region">Where and how.</param>
/// <param name="Course">When, within the exposure.</param>
public sealed record RegionInMotion(MovingRegion Region, MotionCourse Course);
