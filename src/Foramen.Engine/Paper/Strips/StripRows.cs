using Foramen.Engine.Light;

namespace Foramen.Engine.Paper;

/// <summary>Strips brought to rows of numbers.</summary>
internal sealed class StripRows
{
    private StripRows(List<PatchRow> patches, List<VisibilityRow> seen, double[] lightSpreads)
    {
        Patches = patches;
        Seen = seen;
        LightSpreads = lightSpreads;
    }

    public List<PatchRow> Patches { get; }

    public List<VisibilityRow> Seen { get; }

    /// <summary>Standard deviation of the lg of each strip's light.</summary>
    public double[] LightSpreads { get; }

    /// <summary>Least and most lg exposure among the patches that bear on the curve's middle.</summary>
    public (double Least, double Most) Exposures
    {
        get
        {
            var all = Patches.Select(row => row.LgExposure).Concat(Seen.Select(row => row.Second.LgExposure)).Where(double.IsFinite).ToList();
            return all.Count == 0 ? (double.PositiveInfinity, double.NegativeInfinity) : (all.Min(), all.Max());
        }
    }

    public static StripRows Of(IReadOnlyList<Strip> strips, PaperKind kind, PaperSensitivity sensitivity, FailureLaw failure)
    {
        var patches = new List<PatchRow>();
        var seen = new List<VisibilityRow>();
        var spreads = new double[strips.Count];
        for (var s = 0; s < strips.Count; s++)
        {
            var strip = strips[s];
            strip.Check();
            spreads[s] = Math.Max(1e-5, strip.LightSpread.Value * Math.Log10(2));
            var lgLight = LgLight(strip, sensitivity);
            foreach (var patch in strip.Patches)
            {
                var unlit = patch.Time.Seconds <= 0;
                var (x, load) = unlit
                    ? (patch.Fogged ? double.PositiveInfinity : double.NegativeInfinity, 0)
                    : At(lgLight, patch.Time.Seconds, failure);
                var lgSpread = unlit ? 0 : patch.TimingSpread.Seconds / patch.Time.Seconds / Math.Log(10);
                patches.Add(new PatchRow(s, x, load, patch.Density.Value, patch.DensitySpread, lgSpread));
            }

            AddEye(strip, s, kind, lgLight, failure, patches, seen);
        }

        return new StripRows(patches, seen, spreads);
    }

    /// <summary>lg of what the paper counts a strip's light as, in lux of 3000 K light.</summary>
    public static double LgLight(Strip strip, PaperSensitivity sensitivity)
        => Math.Log10(strip.OnSheet.Lux * Actinic.Factor(strip.Light.ToSpectrum(), sensitivity));

    /// <summary>lg of the effective exposure after a time, and the failure's load.</summary>
    public static (double LgExposure, double FailureLoad) At(double lgLight, double seconds, FailureLaw failure)
        => (lgLight + Math.Log10(failure.MeteredSecondsFor(seconds)), Math.Max(0, Math.Log10(seconds)));

    private static void AddEye(
        Strip strip, int s, PaperKind kind, double lgLight, FailureLaw failure, List<PatchRow> patches, List<VisibilityRow> seen)
    {
        var none = (double.NegativeInfinity, 0.0);
        var (first, last) = kind == PaperKind.NegativeWorking
            ? (EyeReading.SeenInLight, EyeReading.SeenInDark)
            : (EyeReading.SeenInDark, EyeReading.SeenInLight);
        (double, double) Step(int number) => At(lgLight, strip.Times[number - 1].Seconds, failure);
        foreach (var reading in strip.Eye)
        {
            var step = reading.Step;
            switch (reading.Kind)
            {
                case EyeReadingKind.FirstTone:
                    if (step <= strip.Times.Count)
                    {
                        seen.Add(new VisibilityRow(s, none, Step(step), first, true));
                    }

                    if (step > 1)
                    {
                        seen.Add(new VisibilityRow(s, none, Step(step - 1), first, false));
                    }

                    break;
                case EyeReadingKind.LastTone:
                    if (step < strip.Times.Count)
                    {
                        seen.Add(new VisibilityRow(s, Step(step), Step(step + 1), last, true));
                    }

                    if (step + 1 < strip.Times.Count)
                    {
                        seen.Add(new VisibilityRow(s, Step(step + 1), Step(step + 2), last, false));
                    }

                    break;
                default:
                    // The true match lies anywhere within half a step of the patch that came nearest.
                    var (x, load) = Step(step);
                    var beside = strip.Times.Count > 1 ? Math.Abs(Step(step == 1 ? 2 : step - 1).Item1 - x) : 0;
                    patches.Add(new PatchRow(s, x, load, reading.Grey!.Value.Value, DensityReading.ByEye, beside / Math.Sqrt(12)));
                    break;
            }
        }
    }
}
