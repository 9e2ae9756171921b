using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Insiders;

/// <summary>
/// How likely it is in one world that a sheet is kept, or that it is judged as it was: summed over the scatter of the sheet with its light and over the error of each
/// reading, on a few points of their normal distributions. Errors of the card's reading and the flash's own scatter are left out.
/// </summary>
internal static class SheetLikelihood
{
    // No guess is ruled out by one sheet, for the sums are coarse.
    private const double Least = 1e-6;

    // A sheet in thirty-three scatters three times as far: its variance on average.
    private const double RareScatter = 1.24;

    private static readonly (double At, double Weight)[] OfSheet = Points(9, 0.55);
    private static readonly (double At, double Weight)[] OfReading = Points(5, 0.85);

    /// <summary>Chance that a sheet is kept.</summary>
    public static double Kept(WorldTruth truth, PlannedSheet sheet)
        => Sum(truth, sheet, judged: null).Kept * (1 - truth.FrameMiss) * (1 - truth.MotionMiss);

    /// <summary>Natural logarithm of the chance of what was said of a sheet.</summary>
    public static double Log(WorldTruth truth, PlannedSheet sheet, JudgedLine judged)
    {
        var (frame, motion) = (judged.Causes.Contains("frame"), judged.Causes.Contains("motion"));
        var (kept, all) = Sum(truth, sheet, judged);
        var tones = frame || motion ? all : judged.Keeper ? kept : all - kept;
        return Math.Log(Math.Max(0, tones) + Least)
            + Math.Log(frame ? truth.FrameMiss : 1 - truth.FrameMiss)
            + Math.Log(motion ? truth.MotionMiss : 1 - truth.MotionMiss);
    }

    private static (double Kept, double All) Sum(WorldTruth truth, PlannedSheet sheet, JudgedLine? judged)
    {
        if (sheet.LightUnder(truth.Families.Clouds) is not { } light)
        {
            return (0, 0);
        }

        var bottle = sheet.Seen.SheetsInBottle;
        var spread = Math.Sqrt((light.Spread * light.Spread) + (truth.SheetScatter * truth.SheetScatter * RareScatter));
        var image = truth.Stops(sheet.Sky, bottle, 0, sheet.Done.Seconds) + light.Mean;
        var flash = sheet.Done.FlashSeconds > 0
            ? truth.Stops(sheet.Sky, bottle, sheet.Card - truth.MeterBias, sheet.Done.FlashSeconds) + truth.FlashBias
            : double.NegativeInfinity;
        var tones = sheet.Tones.Select(tone => (
            Luminance: tone.Ev + WorldTruth.StopsAtEvZero - truth.MeterBias,
            Band: truth.BandOf(tone.Rendering)!.Value,
            Said: judged?.Tones.FirstOrDefault(one => one.Name == tone.Name))).ToArray();
        var (kept, all) = (0.0, 0.0);
        foreach (var (at, weight) in OfSheet)
        {
            var (keptHere, allHere) = (weight, weight);
            var flashed = Math.Pow(2, flash + (at * spread));
            foreach (var (luminance, band, said) in tones)
            {
                var (keptTone, allTone) = (0.0, 0.0);
                foreach (var (error, share) in OfReading)
                {
                    var landed = LandedTone.Of(luminance + (error * truth.ReadingScatter) + image + (at * spread), flashed);
                    var chance = share * (said is null ? 1 : Said(truth, said, landed, band));
                    allTone += chance;
                    keptTone += chance > 0 && truth.Kept(landed, band) ? chance : 0;
                }

                (keptHere, allHere) = (keptHere * keptTone, allHere * allTone);
            }

            (kept, all) = (kept + keptHere, all + allHere);
        }

        return (kept, all);
    }

    // Of a tone whose detail is gone no more is used than that.
    private static double Said(WorldTruth truth, ToneJudged said, LandedTone landed, HiddenBand band)
    {
        var lost = truth.Lost(landed);
        if (said.Lost is not null || lost is not null)
        {
            return said.Lost == lost ? 1 : 0;
        }

        var off = said.LighterByStops - (landed.Total - band.Aim);
        return ((1 - truth.BadJudgement) * HalfStop(off, truth.JudgingScatter)) + (truth.BadJudgement * HalfStop(off, 2));
    }

    private static double HalfStop(double off, double spread) => NormalIntegral.Below((off + 0.25) / spread) - NormalIntegral.Below((off - 0.25) / spread);

    private static (double At, double Weight)[] Points(int count, double step)
    {
        var at = Enumerable.Range(0, count).Select(i => (i - (count / 2)) * step).ToArray();
        var weights = at.Select(z => Math.Exp(-z * z / 2)).ToArray();
        return [.. at.Zip(weights, (z, weight) => (z, weight / weights.Sum()))];
    }
}
