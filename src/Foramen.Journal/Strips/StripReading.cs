using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Strips;

/// <summary>From strips as written down to strips the Engine can fit.</summary>
public static class StripReading
{
    /// <summary>The strip that was made, with what was read on it.</summary>
    /// <exception cref="RefusalException">A value out of its range, or more densities than patches.</exception>
    public static Strip ToStrip(this StripMade made, StripRead? read)
    {
        made.Check();
        read?.Check();
        var times = made.Seconds.Select(Duration.FromSeconds).ToList();
        if (read?.Densities is { } densities && densities.Count != times.Count)
        {
            throw new RefusalException($"There are {densities.Count} densities for {times.Count} patches; give one for each, in order of rising exposure.");
        }

        return new Strip
        {
            OnSheet = Illuminance.FromLux(made.OnStripLux),
            Light = LightOf(made),
            LightSpread = made.LightSdStops is { } sd ? Stops.FromValue(sd) : Strip.UsualLightSpread,
            Patches = read is null ? [] : PatchesOf(made, read),
            Times = times,
            Eye = read is null ? [] : EyeOf(read),
        };
    }

    /// <summary>The light a strip was made in.</summary>
    public static LightColour LightOf(StripMade made) => LightColour.FromTemperature(ColourTemperature.FromKelvin(Math.Clamp(made.LightKelvin, 1500, 25_000)));

    /// <summary>The strips of a box that were made for its curve and have been read, oldest first.</summary>
    public static IReadOnlyList<StripRecord> CurveStripsOf(this Ledger ledger, Ulid paper)
        => [.. ledger.Strips.All
            .Where(strip => strip is { Made.Body.Purpose: StripPurpose.Curve, Read: not null } && strip.Made.Body.Paper == paper)
            .OrderBy(strip => strip.Made!.Order)];

    /// <summary>The box as it was described when the first of these strips was made: strips are not weighed against what was fitted to them.</summary>
    public static PaperDefinition Before(KitItem<PaperDefinition> box, IReadOnlyList<StripRecord> strips)
        => strips.Count == 0 ? box.Current.Body : box.At(strips[0].Made!.Order).Body;

    /// <summary>The curve of a box out of its strips, with its present description as what was thought before.</summary>
    /// <exception cref="RefusalException">The strips do not tell it; the sentence says which strip would.</exception>
    public static StripFit Fit(PaperDefinition box, IReadOnlyList<StripRecord> strips)
    {
        if (strips.Count == 0)
        {
            throw new RefusalException("No strip of this box has been read yet; make one and read it first.");
        }

        var paper = box.ToPaper();
        return StripFit.Of(
            [.. strips.Select(strip => strip.Made!.Body.ToStrip(strip.Read?.Body))], paper.Kind, paper.Sensitivity, StripPrior.For(paper));
    }

    private static List<StripPatch> PatchesOf(StripMade made, StripRead read)
    {
        var patches = new List<StripPatch>();
        if (read.MaskedDensity is { } masked)
        {
            patches.Add(StripPatch.Masked(Density.FromValue(masked), SpreadOf(read, masked)));
        }

        for (var i = 0; i < (read.Densities?.Count ?? 0); i++)
        {
            if (read.Densities![i] is { } density)
            {
                var edges = made.InSeveralOpenings == true ? 2 * (i + 1) : 2;
                patches.Add(StripPatch.Exposed(
                    Duration.FromSeconds(made.Seconds[i]),
                    Density.FromValue(density),
                    SpreadOf(read, density),
                    Duration.FromSeconds(Math.Min(made.Seconds[i], StripPlan.HandSpread.Seconds * Math.Sqrt(edges)))));
            }
        }

        if (read.FoggedDensity is { } fogged)
        {
            patches.Add(StripPatch.FullyFogged(Density.FromValue(fogged), SpreadOf(read, fogged)));
        }

        return patches;
    }

    private static double SpreadOf(StripRead read, double density) => read.DensitySd ?? read.By switch
    {
        StripReader.Densitometer => DensityReading.ByDensitometer,
        StripReader.Scan => DensityReading.ByScan(Density.FromValue(density)),
        _ => DensityReading.ByEye,
    };

    private static List<EyeReading> EyeOf(StripRead read)
    {
        var eye = new List<EyeReading>();
        if (read.FirstTone is { } first)
        {
            eye.Add(new EyeReading(EyeReadingKind.FirstTone, first));
        }

        if (read.LastTone is { } last)
        {
            eye.Add(new EyeReading(EyeReadingKind.LastTone, last));
        }

        if (read.Match is { } match)
        {
            eye.Add(new EyeReading(EyeReadingKind.Match, match.Step, Density.FromValue(match.Density)));
        }

        return eye;
    }
}
