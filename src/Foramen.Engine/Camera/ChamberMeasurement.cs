using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// The focal distance from a print: two marks, or a ruler, of known length at a known distance from the hole, square to its axis, as long on flat paper as measured.
/// </summary>
/// <param name="FocalDistance">f = s·D/S by similar triangles with the hole as their common tip: s on the paper, S in the scene at the distance D.</param>
/// <param name="RelativeSd">Its standard deviation over itself: the three relative spreads add as squares.</param>
public readonly record struct ChamberMeasurement(Length FocalDistance, double RelativeSd)
{
    /// <summary>Spread of a length on the print measured with a ruler, mm (an assumption; the hole's spot is about as wide).</summary>
    public const double OnPaperSdMillimetres = 0.3;

    /// <summary>Relative spread of a distance measured with a tape in the field (an assumption).</summary>
    public const double TapeRelativeSd = 0.003;

    /// <summary>The focal distance.</summary>
    /// <param name="apart">How far apart the marks are, 10 mm to 100 m.</param>
    /// <param name="away">How far the line between them is from the hole, along its axis: 50 mm to 1 km.</param>
    /// <param name="onPaper">How far apart they are on the paper, 3 mm to 2 m.</param>
    /// <exception cref="RefusalException">Outside the ranges, or no camera.</exception>
    public static ChamberMeasurement Of(Length apart, Length away, Length onPaper)
    {
        Guard.Within(apart.Millimetres, 10, 1e5, "the distance between the marks", "mm");
        Guard.Within(away.Millimetres, 50, 1e6, "the distance from the hole to the marks", "mm");
        Guard.Within(onPaper.Millimetres, 3, 2000, "the distance of the marks on the paper", "mm");
        var focal = Guard.Within(onPaper.Millimetres * away.Millimetres / apart.Millimetres, 3, 20_000, "the focal distance that follows", "mm");
        var paper = OnPaperSdMillimetres / onPaper.Millimetres;
        return new ChamberMeasurement(Length.FromMillimetres(focal), Math.Sqrt((paper * paper) + (2 * TapeRelativeSd * TapeRelativeSd)));
    }
}
