namespace Foramen.Engine.Paper;

/// <summary>
/// What strips say of a paper's failure. A strip made by time cannot tell failure from speed and contrast; two of clearly different light can, by the ratio of the
/// times that gave the same density. Until then the law is an assumption and is called one.
/// </summary>
public sealed record FailureEstimate
{
    /// <summary>Least difference between the lights of two strips, in stops, that says anything worth having.</summary>
    public const double LeastLightDifference = 2;

    /// <summary>Largest standard deviation of the exponent that counts as found (an assumption; a prior of 0.05 alone is not).</summary>
    public const double FoundSpread = 0.03;

    internal FailureEstimate(FailureLaw law, double spread, bool found, bool severalLights)
    {
        Law = law;
        SpreadPerDoubling = spread;
        IsAssumed = !found;
        HasSeveralLights = severalLights;
    }

    /// <summary>The law to use: as found, or as assumed.</summary>
    public FailureLaw Law { get; }

    /// <summary>Standard deviation of the exponent after the strips.</summary>
    public double SpreadPerDoubling { get; }

    /// <summary>Whether the law still is what was assumed, because the strips do not say.</summary>
    public bool IsAssumed { get; }

    /// <summary>Whether two of the strips were made in clearly different light.</summary>
    public bool HasSeveralLights { get; }

    /// <summary>Schwarzschild's p, where the law is his and the strips say; null otherwise.</summary>
    public double? Exponent => IsAssumed ? null : (Law as SchwarzschildFailure)?.Exponent;
}
