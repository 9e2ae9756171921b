using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What must be so for a span of time to be worth being there. All that is asked for must hold at once. Immutable.</summary>
public sealed record WindowWish
{
    /// <summary>Whether the sun must shine on the facade.</summary>
    public bool SunOnFacade { get; init; } = true;

    /// <summary>Least angle between the sun's light and the facade, 0° to 90°; 0° lets it graze.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Angle LeastRaking
    {
        get;
        init => field = Angle.FromDegrees(Guard.Within(value.Degrees, 0, 90, "the least raking angle", "°"));
    }

    /// <summary>Whether the sun must be out of the picture by a degree.</summary>
    public bool SunOutOfPicture { get; init; } = true;

    /// <summary>Whether the sun must not shine on the hole.</summary>
    public bool SunOffHole { get; init; }

    /// <summary>Longest exposure that will do; null for any.</summary>
    public Duration? LongestExposure { get; init; } = Duration.FromMinutes(10);

    /// <summary>The sky counted on.</summary>
    public SkyCover Cover { get; init; } = SkyCover.Clear;
}
