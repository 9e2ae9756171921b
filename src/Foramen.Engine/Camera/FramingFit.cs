using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>How an upright subject lies on the sheet with the camera tilted so far.</summary>
/// <param name="Tilt">The camera's tilt, above the horizontal.</param>
/// <param name="MarginTop">Room above the subject over the picture's height; negative where it is cut off.</param>
/// <param name="MarginBottom">Room below the subject over the picture's height; negative where it is cut off.</param>
/// <param name="TopOverBase">
/// Width of a narrow subject at its top over that at its base, as drawn. On flat paper cos(β−t)·cos τ / (cos(τ−t)·cos β), elevations β of the
/// base and τ of the top, tilt t: one when level, less when tilted up.
/// </param>
/// <param name="EdgeLean">
/// How far an upright line leans inwards at the picture's side, half-way up; outwards if negative. On flat paper uprights run to a point f/tan t
/// above the axis' foot. Null on curved paper, where they bend.
/// </param>
public readonly record struct FramingFit(Angle Tilt, double MarginTop, double MarginBottom, double TopOverBase, Angle? EdgeLean)
{
    /// <summary>Whether base and top are both on the sheet.</summary>
    public bool Fits => LeastMargin >= 0;

    /// <summary>The smaller of the two margins.</summary>
    public double LeastMargin => Math.Min(MarginTop, MarginBottom);
}
