namespace Foramen.Engine.Light;

/// <summary>What can happen in the sky of a day.</summary>
public enum SkyEventKind
{
    /// <summary>The Sun comes up through 18° below the horizon.</summary>
    AstronomicalDawn,

    /// <summary>The Sun comes up through 12° below the horizon.</summary>
    NauticalDawn,

    /// <summary>The Sun comes up through 6° below the horizon.</summary>
    CivilDawn,

    /// <summary>The Sun's upper edge appears.</summary>
    Sunrise,

    /// <summary>The Sun crosses the meridian, due south or due north at its highest.</summary>
    SolarNoon,

    /// <summary>The Sun's upper edge disappears.</summary>
    Sunset,

    /// <summary>The Sun goes down through 6° below the horizon.</summary>
    CivilDusk,

    /// <summary>The Sun goes down through 12° below the horizon.</summary>
    NauticalDusk,

    /// <summary>The Sun goes down through 18° below the horizon.</summary>
    AstronomicalDusk,

    /// <summary>The Moon's upper edge appears.</summary>
    Moonrise,

    /// <summary>The Moon's upper edge disappears.</summary>
    Moonset,
}
