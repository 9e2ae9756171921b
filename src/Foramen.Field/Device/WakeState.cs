namespace Foramen.Field.Device;

/// <summary>Whether the screen is kept awake.</summary>
public enum WakeState
{
    /// <summary>Not asked for.</summary>
    Off,

    /// <summary>Kept awake.</summary>
    Held,

    /// <summary>The browser will not (a low battery, say): the user must touch the screen now and then.</summary>
    Refused,

    /// <summary>The browser cannot.</summary>
    Missing,
}
