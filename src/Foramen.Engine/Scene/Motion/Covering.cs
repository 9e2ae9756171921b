using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A point of the background that something else covers for part of the exposure: what passes, turns, opens or sways comes down to this. Immutable.</summary>
public sealed record Covering
{
    private Covering(double share, double luminanceRatio, Duration atATime, bool softEdged)
        => (Share, LuminanceRatio, AtATime, SoftEdged) = (share, luminanceRatio, atATime, softEdged);

    /// <summary>Part of the exposure during which the point is covered, 0 to 1.</summary>
    public double Share { get; }

    /// <summary>Luminance of what covers over that of the background; 0 for black.</summary>
    public double LuminanceRatio { get; }

    /// <summary>How long the point is covered at a time.</summary>
    public Duration AtATime { get; }

    /// <summary>Whether what is left has soft edges, which the eye misses more easily.</summary>
    public bool SoftEdged { get; }

    /// <summary>A covering.</summary>
    /// <param name="share">0 to 1.</param>
    /// <param name="luminanceRatio">0 to 10 000.</param>
    /// <param name="atATime">How long at a time.</param>
    /// <param name="softEdged">Whether its trace has soft edges.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static Covering Of(double share, double luminanceRatio, Duration atATime, bool softEdged = true) => new(
        Guard.Within(share, 0, 1, "the part of the exposure that is covered"),
        Guard.Within(luminanceRatio, 0, 10_000, "the luminance against the background"),
        atATime,
        softEdged);
}
