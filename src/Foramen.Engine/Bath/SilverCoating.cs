using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// The silver in a paper, g/m², and how much of it a print's developed tones keep back from the fixer. Papers are coated with 1.0 to
/// 1.6 g/m² (from memory). The developed part is taken as the mean density over the deepest black: a linear guess.
/// </summary>
public sealed record SilverCoating
{
    private SilverCoating(double gramsPerSquareMetre) => GramsPerSquareMetre = gramsPerSquareMetre;

    /// <summary>1.4 g/m².</summary>
    public static SilverCoating Usual { get; } = new(1.4);

    /// <summary>Silver coated, g/m².</summary>
    public double GramsPerSquareMetre { get; }

    /// <summary>Grams of silver that a sheet gives to the fixer.</summary>
    /// <param name="area">Of the sheet.</param>
    /// <param name="undeveloped">Part of the silver that was not developed, 0 to 1.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double GramsInto(Area area, double undeveloped)
        => GramsPerSquareMetre * Guard.Within(undeveloped, 0, 1, "the undeveloped part of the silver") * area.SquareMetres;

    /// <summary>The undeveloped part for a print of this mean density.</summary>
    /// <param name="mean">Mean density above the paper's white.</param>
    /// <param name="deepest">Density of the deepest black above the paper's white.</param>
    public static double UndevelopedPart(Density mean, Density deepest)
        => deepest.Value <= 0 ? 1 : 1 - Math.Clamp(mean.Value / deepest.Value, 0, 1);
}
