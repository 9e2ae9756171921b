namespace Foramen.Field.Device;

/// <summary>What is heard.</summary>
public enum Signal
{
    /// <summary>A second.</summary>
    Tick,

    /// <summary>Do something now: agitate, change baths.</summary>
    Cue,

    /// <summary>It is done: cover the hole.</summary>
    End,
}
