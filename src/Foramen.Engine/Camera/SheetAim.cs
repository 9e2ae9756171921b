using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// Where the camera points against a photograph taken from the same place. Moving the frame over the photograph is a pan and the camera's own
/// tilt. The default is straight along a level photograph's axis. Immutable.
/// </summary>
public readonly record struct SheetAim
{
    private SheetAim(Angle pan, Angle photographTilt)
    {
        Pan = pan;
        PhotographTilt = photographTilt;
    }

    /// <summary>How far the camera points to the right of the photograph's axis.</summary>
    public Angle Pan { get; }

    /// <summary>How far the photograph's axis pointed above the horizontal.</summary>
    public Angle PhotographTilt { get; }

    /// <summary>An aim.</summary>
    /// <param name="pan">To the right, within ± 180 degrees.</param>
    /// <param name="photographTilt">Above the horizontal, within ± 90 degrees.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static SheetAim FromAngles(Angle pan, Angle photographTilt = default)
    {
        Guard.Within(pan.Degrees, -180, 180, "the pan", "°");
        Guard.Within(photographTilt.Degrees, -90, 90, "the photograph's tilt", "°");
        return new SheetAim(pan, photographTilt);
    }
}
