namespace Foramen.Engine.Exposure;

/// <summary>What is left on the print of something that moved.</summary>
public enum MotionVerdict
{
    /// <summary>Nothing that can be seen.</summary>
    Vanishes,

    /// <summary>A trace through which the background shows.</summary>
    Ghost,

    /// <summary>It looks as if it had stood there.</summary>
    Stays,
}
