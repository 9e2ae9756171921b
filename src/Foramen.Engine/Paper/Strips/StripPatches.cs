using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>The densities that a fit took in, beside its curve.</summary>
internal static class StripPatches
{
    public static IReadOnlyList<FittedPatch> Of(StripPosterior posterior, IReadOnlyList<Strip> strips)
    {
        var patches = new List<FittedPatch>();
        var row = 0;
        for (var s = 0; s < strips.Count; s++)
        {
            var strip = strips[s];
            foreach (var patch in strip.Patches)
            {
                patches.Add(At(posterior, row++, patch.Time));
            }

            // Matches by eye stand after the patches, in the order of the readings.
            foreach (var reading in strip.Eye.Where(reading => reading.Kind == EyeReadingKind.Match))
            {
                patches.Add(At(posterior, row++, strip.Times[reading.Step - 1]));
            }
        }

        return patches;
    }

    private static FittedPatch At(StripPosterior posterior, int index, Duration time)
    {
        var row = posterior.Rows.Patches[index];
        var x = row.LgExposure + (posterior.Free[StripParameters.Failure] * row.FailureLoad) + posterior.Free[StripParameters.FirstLight + row.Strip];
        return new FittedPatch(
            row.Strip,
            time,
            x,
            Density.FromValue(row.Density),
            Density.FromValue(Math.Clamp(StripModel.DensityAt(posterior.Shape, x), 0, 4)),
            posterior.Weights[index]);
    }
}
