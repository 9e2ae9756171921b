namespace Foramen.Rehearsal.Worlds;

/// <summary>How the light goes on after it was metered.</summary>
internal enum CloudFamily
{
    /// <summary>A wandering that comes back (Ornstein and Uhlenbeck), correlated over minutes.</summary>
    Wandering,

    /// <summary>Sun and cloud in turn.</summary>
    SunAndCloud,

    /// <summary>A slow ramp with short dips.</summary>
    RampWithDips,
}
