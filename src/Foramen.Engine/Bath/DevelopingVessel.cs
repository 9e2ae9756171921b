namespace Foramen.Engine.Bath;

/// <summary>Whether the sheet can be watched while it develops.</summary>
public enum DevelopingVessel
{
    /// <summary>A tray under safelight, in a dark tent or room.</summary>
    Tray,

    /// <summary>A closed tank, or the camera itself.</summary>
    ClosedTank,
}
