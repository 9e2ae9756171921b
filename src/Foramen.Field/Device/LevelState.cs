namespace Foramen.Field.Device;

/// <summary>Whether there is a level to look at.</summary>
public enum LevelState
{
    /// <summary>Readings come.</summary>
    On,

    /// <summary>Not permitted.</summary>
    Refused,

    /// <summary>No sensor.</summary>
    Missing,
}
