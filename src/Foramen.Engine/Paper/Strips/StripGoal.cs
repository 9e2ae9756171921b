namespace Foramen.Engine.Paper;

/// <summary>What the next strip is to find out.</summary>
public enum StripGoal
{
    /// <summary>The curve: the exposures of the first tone, the mid-tone and the darkest tone.</summary>
    Curve,

    /// <summary>The failure exponent.</summary>
    Failure,
}
