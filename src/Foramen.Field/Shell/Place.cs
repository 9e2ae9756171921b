namespace Foramen.Field.Shell;

/// <summary>The places of the app, and the settings beside them.</summary>
public enum Place
{
    /// <summary>A day out.</summary>
    Outing,

    /// <summary>The sheet in hand.</summary>
    Sheet,

    /// <summary>Where gear is measured.</summary>
    Bench,

    /// <summary>All sheets.</summary>
    Ledger,

    /// <summary>Look, units, signals.</summary>
    Settings,

    /// <summary>None of these.</summary>
    Nowhere,
}
