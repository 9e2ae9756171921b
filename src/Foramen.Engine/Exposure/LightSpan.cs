using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>A span of the exposure during which the light was constant.</summary>
/// <param name="Time">How long, by the clock.</param>
/// <param name="Light">Light against the metered light, in stops; −2 is a quarter of it. Meaningless while covered.</param>
/// <param name="Covered">Whether the hole was covered: no light at all.</param>
public readonly record struct LightSpan(Duration Time, Stops Light, bool Covered = false)
{
    /// <summary>A span with the hole covered.</summary>
    public static LightSpan CoveredFor(Duration time) => new(time, Stops.Zero, true);
}
