using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Foliage in wind, a moored boat, waves: everything in the region goes to and fro, up and down independently of left and right. Immutable.</summary>
public sealed record SwaysInPlace : RegionMotion
{
    /// <summary>How far to each side, as a part of the region's width, 0 to 0.5.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required double ReachOfWidth
    {
        get;
        init => field = Guard.Within(value, 0, 0.5, "the reach of the swaying, as a part of the region’s width");
    }

    /// <summary>Time of one swing to and fro.</summary>
    /// <exception cref="RefusalException">Not between 1 ms and 1e6 s.</exception>
    public required Duration Period
    {
        get;
        init => field = Duration.FromSeconds(Guard.Within(value.Seconds, 1e-3, 1e6, "the time of a swing", "s"));
    }
}
