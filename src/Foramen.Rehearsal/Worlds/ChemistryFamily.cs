namespace Foramen.Rehearsal.Worlds;

/// <summary>How the developer tires.</summary>
internal enum ChemistryFamily
{
    /// <summary>So much a sheet.</summary>
    Steady,

    /// <summary>Nothing for a while, then quickly.</summary>
    Knee,

    /// <summary>Quickly, then settling.</summary>
    Settling,

    /// <summary>So much a sheet, and refreshed after ten.</summary>
    Refreshed,
}
