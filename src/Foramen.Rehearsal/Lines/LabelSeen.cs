namespace Foramen.Rehearsal.Lines;

/// <summary>What the box of paper says of itself; it need not be true.</summary>
public sealed record LabelSeen
{
    /// <summary><c>negative</c> or <c>directPositive</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Exposure index, in noon light.</summary>
    public required double ExposureIndex { get; init; }

    /// <summary>Time it is for, s.</summary>
    public required double AtSeconds { get; init; }

    /// <summary>ISO range R, or its mirror.</summary>
    public required double IsoRange { get; init; }

    /// <summary>Density of the lightest tone.</summary>
    public required double DMin { get; init; }

    /// <summary>Density of the darkest tone.</summary>
    public required double DMax { get; init; }

    /// <summary>Schwarzschild's p.</summary>
    public required double FailureExponent { get; init; }
}
