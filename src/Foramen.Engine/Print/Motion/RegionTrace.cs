using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>What is left to be seen on the sheet, as it is processed, of what moved in a region.</summary>
/// <param name="Still">
/// What there would be to see if it stood, as a difference in density: for what passes or goes away, the mean difference against its background; for what turns, sways
/// or flows, twice the standard deviation along its way.
/// </param>
/// <param name="Moved">The same with the motion.</param>
/// <param name="Density">Mean density of the region with the motion.</param>
/// <param name="Verdict">
/// Vanishes below <see cref="MotionOnPaper.SoftSeen"/>, stays from <see cref="MotionOnPaper.StaysFrom"/> of <paramref name="Still"/> on; both limits are assumptions.
/// </param>
public sealed record RegionTrace(double Still, double Moved, Density Density, MotionVerdict Verdict)
{
    internal static RegionTrace Of(double still, double moved, double density) => new(
        still,
        moved,
        Quantities.Density.FromValue(Math.Clamp(density, 0, 5)),
        moved < MotionOnPaper.SoftSeen ? MotionVerdict.Vanishes : moved >= MotionOnPaper.StaysFrom * still ? MotionVerdict.Stays : MotionVerdict.Ghost);
}
