using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// How far a fixer may be used. Silver: 0.5 g/l for one bath and prints that are to last, 2 g/l for the first of two or for general use (G. Haist, <i>Modern Photographic Processing</i>, 1979; from memory). Area: 200 sheets of 8 × 10 in to the US gallon,
/// 2.73 m²/l (US Navy NAVEDTRA 14209). Immutable.
/// </summary>
public sealed record FixerLimits
{
    private FixerLimits(double silver, double area)
    {
        SilverGramsPerLitre = silver;
        SquareMetresPerLitre = area;
    }

    /// <summary>The first of two baths, or a single one for prints that need not last.</summary>
    public static FixerLimits FirstBath { get; } = new(2, 2.73);

    /// <summary>Silver, g/l.</summary>
    public double SilverGramsPerLitre { get; }

    /// <summary>Area of paper to the litre, m²/l.</summary>
    public double SquareMetresPerLitre { get; }

    /// <summary>Limits of one's own.</summary>
    /// <param name="silverGramsPerLitre">0.01 to 20 g/l.</param>
    /// <param name="squareMetresPerLitre">0.01 to 100 m²/l.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static FixerLimits From(double silverGramsPerLitre, double squareMetresPerLitre) => new(
        Guard.Within(silverGramsPerLitre, 0.01, 20, "the silver a fixer may hold", "g/l"),
        Guard.Within(squareMetresPerLitre, 0.01, 100, "the area a fixer may take", "m²/l"));
}
