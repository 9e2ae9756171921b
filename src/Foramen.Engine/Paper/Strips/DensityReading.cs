using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>How well a density is known by the way it was read. All are assumptions: no source for this craft is known to us.</summary>
public static class DensityReading
{
    /// <summary>A reflection densitometer.</summary>
    public const double ByDensitometer = 0.02;

    /// <summary>Compared by eye with a printed grey scale through two holes in a card.</summary>
    public const double ByEye = 0.06;

    /// <summary>From a scan: worse in the blacks, where flare and noise are the larger part, √(0.02² + (0.03·D)²).</summary>
    public static double ByScan(Density density) => Math.Sqrt((0.02 * 0.02) + (0.03 * density.Value * 0.03 * density.Value));
}
