namespace Foramen.Journal.Kit;

/// <summary>
/// A box of paper as it is written down: the description in a <c>paper.defined</c> entry and a paper file for the prompt. The Engine's room Paper says
/// what the values mean and checks their ranges.
/// </summary>
public sealed record PaperDefinition
{
    /// <summary>What its owner calls the box.</summary>
    public required string Name { get; init; }

    /// <summary><c>negative</c> or <c>directPositive</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Density of the lightest tone; 0.08 where missing.</summary>
    public double? DMin { get; init; }

    /// <summary>Density of the darkest tone; 1.98 where missing.</summary>
    public double? DMax { get; init; }

    /// <summary>ISO range R (or its mirror for direct-positive paper); 110 negative, 90 direct-positive where missing.</summary>
    public double? IsoRange { get; init; }

    /// <summary>Asymmetry g of the curve: below 1 a long toe, above 1 a long shoulder; 1 where missing.</summary>
    public double? Asymmetry { get; init; }

    /// <summary>How fast it is, and when and in what light that was found.</summary>
    public required SpeedDefinition Speed { get; init; }

    /// <summary>Sensitivity to colour: <c>blue</c> or <c>variableContrast</c>; blue where missing.</summary>
    public string? Sensitivity { get; init; }

    /// <summary>Law of low-intensity failure; Schwarzschild with p = 0.90 as an assumption where missing.</summary>
    public FailureDefinition? Failure { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }
}
