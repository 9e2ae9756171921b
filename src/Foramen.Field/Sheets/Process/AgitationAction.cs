namespace Foramen.Field.Sheets.Process;

/// <summary>What the hand does in a bath.</summary>
public enum AgitationAction
{
    /// <summary>Rock or turn the vessel.</summary>
    Move,

    /// <summary>Let it stand.</summary>
    Rest,

    /// <summary>Pour the water away, take fresh water, and rock.</summary>
    FreshWater,

    /// <summary>The time is over: drain and go on.</summary>
    Drain,
}
