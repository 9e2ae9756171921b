namespace Foramen.Engine.Learning;

/// <summary>What keepers are lost to, as a photographer would put it.</summary>
public enum OddsPart
{
    /// <summary>Paper: its speed, failure, curve, the flash on it.</summary>
    Paper,

    /// <summary>Meter: the meter, the readings of single tones, the hole.</summary>
    Meter,

    /// <summary>Light: sky, colour, what it does during the exposure.</summary>
    Light,

    /// <summary>Frame: aiming.</summary>
    Frame,

    /// <summary>Process: developer, temperature, timing.</summary>
    Process,

    /// <summary>Motion.</summary>
    Motion,

    /// <summary>The scene: more range than paper and flash can hold.</summary>
    Scene,
}
