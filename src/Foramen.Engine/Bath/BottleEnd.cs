namespace Foramen.Engine.Bath;

/// <summary>What makes a bottle's last sheet its last.</summary>
public enum BottleEnd
{
    /// <summary>Nothing within the horizon of the forecast.</summary>
    None,

    /// <summary>The activity falls below the limit.</summary>
    Activity,

    /// <summary>Too little is left to cover a sheet.</summary>
    Volume,

    /// <summary>More sheets have gone through each litre than handbooks know of.</summary>
    Data,
}
