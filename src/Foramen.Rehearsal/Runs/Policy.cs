namespace Foramen.Rehearsal.Runs;

/// <summary>How the photographer decides.</summary>
public enum Policy
{
    /// <summary>Without an engine.</summary>
    RuleOfThumb,

    /// <summary>By the Engine's advice.</summary>
    Foramen,

    /// <summary>Knowing the world.</summary>
    Oracle,

    /// <summary>Knowing how worlds are made, and which this is only from what can be seen.</summary>
    Insider,
}
