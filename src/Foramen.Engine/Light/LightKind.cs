namespace Foramen.Engine.Light;

/// <summary>Where a light's spectrum is taken from.</summary>
public enum LightKind
{
    /// <summary>A full radiator: lamps, and a low sun.</summary>
    Radiator,

    /// <summary>CIE daylight.</summary>
    Daylight,
}
