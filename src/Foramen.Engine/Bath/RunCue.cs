namespace Foramen.Engine.Bath;

/// <summary>What the hands should do.</summary>
public enum RunCue
{
    /// <summary>Move the tank.</summary>
    Agitate,

    /// <summary>Leave it alone.</summary>
    Still,

    /// <summary>Pour the bath out.</summary>
    PourOut,

    /// <summary>Nothing more: the run is over.</summary>
    Done,
}
