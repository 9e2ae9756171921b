using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Angles the sheet sees.</summary>
/// <param name="Horizontal">From the middle of the left edge to the middle of the right edge, seen from above; by the arc on curved paper.</param>
/// <param name="Vertical">From the lower edge to the upper one, above and below the foot of the hole's axis.</param>
/// <param name="Diagonal">The larger of the two between opposite corners.</param>
public readonly record struct FieldAngles(Angle Horizontal, Angle Vertical, Angle Diagonal);
