namespace Foramen.Engine.Bath;

/// <summary>How a sheet is kept in fresh liquid.</summary>
public enum AgitationMotion
{
    /// <summary>A camera or box that is its own tank is tilted to and fro.</summary>
    Tilt,

    /// <summary>A tray is rocked by one edge.</summary>
    Rock,

    /// <summary>A drum or tank is turned.</summary>
    Turn,
}
