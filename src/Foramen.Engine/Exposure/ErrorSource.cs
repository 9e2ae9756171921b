namespace Foramen.Engine.Exposure;

/// <summary>What can put a sheet off its plan.</summary>
public enum ErrorSource
{
    /// <summary>Speed of this box of paper.</summary>
    Paper,

    /// <summary>Low-intensity failure away from the time the speed was found at.</summary>
    Failure,

    /// <summary>The meter, or the photograph used as one, as a whole.</summary>
    Meter,

    /// <summary>Reading of single tones.</summary>
    ToneReadings,

    /// <summary>The light changing between metering and the end of the exposure.</summary>
    Light,

    /// <summary>The colour of the light.</summary>
    Colour,

    /// <summary>The true diameter of the hole.</summary>
    Hole,

    /// <summary>Developer, temperature, time in the bath.</summary>
    Development,

    /// <summary>Opening and closing by hand.</summary>
    Timing,

    /// <summary>How strong the flash really was.</summary>
    Flash,

    /// <summary>The scene itself: more range than paper and flash can hold, whatever is known.</summary>
    SceneRange,
}
