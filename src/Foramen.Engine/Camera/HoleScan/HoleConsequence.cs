using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>What a hole as measured does in a camera, against the hole it was thought to have and against the best one.</summary>
/// <param name="Light">How much more light than through the hole in the description: 2·lg2 of the diameters' ratio.</param>
/// <param name="LightSd">Standard deviation of the hole's light, 2·lg2(1 + relative spread).</param>
/// <param name="FNumber">f-number with the hole as measured.</param>
/// <param name="BestDiameter">The best hole for this distance by the usual criterion.</param>
/// <param name="FinestLines">Line pairs per mm at a tenth of their contrast through the hole as measured.</param>
/// <param name="FinestLinesAtBest">The same through the best hole.</param>
public readonly record struct HoleConsequence(
    Stops Light, Stops LightSd, FNumber FNumber, Length BestDiameter, double FinestLines, double FinestLinesAtBest)
{
    /// <summary>The contrast that still tells lines apart.</summary>
    public const double LeastContrast = 0.1;

    /// <summary>What a measured hole does in a camera.</summary>
    /// <param name="camera">The camera, with the hole it was thought to have.</param>
    /// <param name="hole">The hole as measured.</param>
    /// <param name="light">The wavelengths that make the picture.</param>
    /// <exception cref="RefusalException">The hole is too large for the camera.</exception>
    public static HoleConsequence Of(PinholeCamera camera, Hole hole, PaperLight light)
    {
        var real = camera.WithHole(hole);
        var best = Camera.BestDiameter.Compute(camera.FocalDistance, light, SharpnessCriterion.Usual);
        return new HoleConsequence(
            Stops.FromValue(2 * Math.Log2(hole.Diameter.Metres / camera.Hole.Diameter.Metres)),
            Stops.FromValue(2 * Math.Log2(1 + hole.DiameterRelativeSd)),
            real.FNumber,
            best,
            PointSpread.Of(hole.Diameter, camera.FocalDistance, light).LinePairsPerMillimetreAt(LeastContrast),
            PointSpread.Of(best, camera.FocalDistance, light).LinePairsPerMillimetreAt(LeastContrast));
    }
}
