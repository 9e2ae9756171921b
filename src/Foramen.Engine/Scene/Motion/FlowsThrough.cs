using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Clouds, running or falling water: what the region shows drifts through it, and more of the same kind follows. Immutable.</summary>
public sealed record FlowsThrough : RegionMotion
{
    /// <summary>Time to drift from one side of the region to the other.</summary>
    /// <exception cref="RefusalException">Not between 1 ms and 1e7 s.</exception>
    public required Duration Crossing
    {
        get;
        init => field = Duration.FromSeconds(Guard.Within(value.Seconds, 1e-3, Duration.Max, "the time to drift through the region", "s"));
    }

    /// <summary>Whether it goes up or down instead of across.</summary>
    public bool Upright { get; init; }
}
