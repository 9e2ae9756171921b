namespace Foramen.Journal.Kit;

/// <summary>A law of low-intensity failure, as written down.</summary>
public sealed record FailureDefinition
{
    /// <summary><c>schwarzschild</c>, <c>additivePower</c> or <c>table</c>.</summary>
    public required string Law { get; init; }

    /// <summary>Schwarzschild's p.</summary>
    public double? Exponent { get; init; }

    /// <summary>Standard deviation of p; 0.05 where missing.</summary>
    public double? ExponentSd { get; init; }

    /// <summary>Additive power: seconds added at one metered second.</summary>
    public double? ExtraSecondsAtOneSecond { get; init; }

    /// <summary>Table: rows of metered seconds and seconds needed.</summary>
    public IReadOnlyList<double[]>? Rows { get; init; }
}
