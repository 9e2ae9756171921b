using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>One line of sight over a box: from a rear mark over the front mark, which is right above or beside the hole.</summary>
/// <param name="Face">The face it is on.</param>
/// <param name="Name">What it points at: left edge, middle, right edge; lower edge, middle, upper edge.</param>
/// <param name="Direction">Where it points, from the hole's axis: to the right on the top, upwards on the side.</param>
/// <param name="RearAcrossMillimetres">
/// Where the rear mark goes, from straight behind the front mark: to the right on the top, upwards on the side; −b·tan(direction), because lines of sight cross at the
/// front mark as the light crosses in the hole.
/// </param>
public readonly record struct SightLine(MarkFace Face, string Name, Angle Direction, double RearAcrossMillimetres);
