using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>Where something stands in the sky, by its middle.</summary>
/// <param name="Azimuth">From true north through east, 0° to 360°. Not a compass bearing: that differs by the local declination.</param>
/// <param name="Elevation">Above the level horizon as it is seen, refraction included.</param>
/// <param name="TrueElevation">Above the level horizon without air.</param>
public readonly record struct SkyPosition(Angle Azimuth, Angle Elevation, Angle TrueElevation)
{
    /// <summary>From straight overhead, as it is seen.</summary>
    public Angle Zenith => Angle.FromDegrees(90 - Elevation.Degrees);
}
