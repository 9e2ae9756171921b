using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// How fast a paper is, as somebody found it: a speed is meaningless without the light and the time it was found at, so each kind carries both
/// and turns itself once, and only once, into the effective exposure of the mid-tone (lux seconds of 3000 K light in one second).
/// </summary>
public abstract record PaperSpeed
{
    /// <summary>The light it was found in.</summary>
    public abstract LightColour FoundIn { get; }

    /// <summary>The exposure time it was found at.</summary>
    public abstract Duration FoundAt { get; }

    /// <summary>The density that <see cref="MidToneExposure"/> gives, on a paper with these limits.</summary>
    /// <param name="kind">Negative-working or direct-positive.</param>
    /// <param name="min">Dmin.</param>
    /// <param name="max">Dmax.</param>
    public abstract Density MidToneDensity(PaperKind kind, Density min, Density max);

    /// <summary>The effective exposure that gives <see cref="MidToneDensity"/>.</summary>
    /// <param name="sensitivity">The paper's colour sensitivity.</param>
    /// <param name="failure">The paper's failure law.</param>
    public abstract LuminousExposure MidToneExposure(PaperSensitivity sensitivity, FailureLaw failure);
}
